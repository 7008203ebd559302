package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.published.PublishedCase;

class BridgeTimeStepperTest {

    static final DiodeLine DIODE = new DiodeLine(0.8135, 0.005);

    static Stream<CircuitPoint> settled() {
        return CircuitPoint.where(p -> !p.id().endsWith("_exp")
                && Stream.of("batt", "res", "rescap", "choke").anyMatch(p.load()::equals));
    }

    static Stream<CircuitPoint> transients() {
        return CircuitPoint.where(p -> Stream.of("oc", "ocs", "dump").anyMatch(p.load()::equals));
    }

    static Stream<PublishedCase> faults() {
        return PublishedCase.of("electrical-rectifier-ngspice")
                .filter(c -> c.text("fault").equals("phase_open"));
    }

    static Stream<PublishedCase> ratios() {
        return PublishedCase.of("electrical-diagnosis");
    }

    static DcLoad load(CircuitPoint p) {
        double period = 2 * Math.PI / p.alternator().electricalSpeed(p.speed());
        return switch (p.load()) {
            case "batt" -> new DcLoad.Battery(p.at("VB"), p.at("RB"));
            case "res" -> new DcLoad.Resistor(p.at("RL"));
            case "rescap" -> DcLoad.Capacitor.alone(p.at("C"), p.at("RL"), p.at("Vdc_V"));
            case "choke" -> new DcLoad.Choke(p.at("RL"), 0.05);
            case "oc" -> DcLoad.Capacitor.alone(p.at("C"), 20_000, Math.sqrt(2) * p.at("ell") - 2.1);
            case "ocs" -> DcLoad.Capacitor.alone(p.at("C"), 1e6, 0);
            case "dump" -> new DcLoad.Capacitor(p.at("C"), 1e6, p.at("VB"), p.at("VB"), p.at("RB"), 12 * period);
            default -> throw new AssertionError(p.load());
        };
    }

    static BridgeTimeStepper stepper(CircuitPoint p) {
        return new BridgeTimeStepper(p.alternator(), 0, DIODE, p.speed(), load(p), BridgeFault.NONE, 1440);
    }

    static double off(double ours, double theirs) {
        return ours / theirs - 1;
    }

    @ParameterizedTest
    @MethodSource("settled")
    void settled_currents_agree_with_the_circuit_simulator(CircuitPoint p) {
        BridgeTimeStepper stepper = stepper(p);
        stepper.run(60);
        BridgeWaveform w = stepper.measure(6);
        double band = p.at("Idc_A") > 3 ? 0.005 : 0.03;
        assertThat(off(w.directCurrent(), p.at("Idc_A"))).as("d.c. current").isCloseTo(0, within(band));
        assertThat(off(w.phaseCurrentRms(), p.at("Iph_rms_A"))).as("phase rms").isCloseTo(0, within(band));
        assertThat(off(w.torque(), p.at("T_brake_Nm"))).as("torque").isCloseTo(0, within(band));
        assertThat(off(w.directVoltage(), p.at("Vdc_V"))).as("d.c. voltage").isCloseTo(0, within(band));
    }

    @ParameterizedTest
    @MethodSource("transients")
    void highest_voltages_agree_with_the_circuit_simulator(CircuitPoint p) {
        BridgeWaveform w = stepper(p).measure(p.load().equals("oc") ? 6 : 40);
        assertThat(off(w.greatestDirectVoltage(), p.at("Vdc_max_V"))).isCloseTo(0, within(0.005));
        if (p.load().equals("oc")) {
            assertThat(off(w.directVoltage(), p.at("Vdc_V"))).isCloseTo(0, within(0.001));
        }
    }

    static Stream<PublishedCase> published() {
        return PublishedCase.of("electrical-rectifier-ngspice")
                .filter(c -> Stream.of("oc", "ocs", "dump", "choke").anyMatch(c.text("load")::equals));
    }

    private static void matches(PublishedCase c, BridgeWaveform w) {
        c.assertMatches("Idc", w.directCurrent());
        c.assertMatches("Vdc", w.directVoltage());
        c.assertMatches("I_phase_rms", w.phaseCurrentRms());
        c.assertMatches("P_emf", w.airGapPower());
        c.assertMatches("P_dc", w.directPower());
        c.assertMatches("P_copper", w.copperLoss());
        c.assertMatches("T_brake", w.torque());
    }

    @ParameterizedTest
    @MethodSource("published")
    void published_transients_and_choke_loads_are_met(PublishedCase c) {
        CircuitPoint p = CircuitPoint.where(q -> c.id().equals("spice-" + q.id()))
                .findAny()
                .orElseThrow();
        BridgeTimeStepper stepper = stepper(p);
        if (c.text("load").equals("choke")) {
            stepper.run(60);
            BridgeWaveform w = stepper.measure(6);
            matches(c, w);
        } else if (c.text("load").equals("oc")) {
            c.assertMatches("Vdc", stepper.measure(6).directVoltage());
        } else {
            c.assertMatches("Vdc_max", stepper.measure(40).greatestDirectVoltage());
            c.assertMatches("E_LL_peak", ReverseVoltage.openCircuit(p.alternator(), p.speed(), 1));
        }
    }

    @ParameterizedTest
    @MethodSource("faults")
    void a_lost_phase_agrees_with_the_circuit_simulator(PublishedCase c) {
        BridgeWaveform w = settledFault(c, BridgeFault.PHASE_OPEN);
        matches(c, w);
        c.assertMatches("P_diodes", w.airGapPower() - w.directPower() - w.copperLoss());
    }

    @ParameterizedTest
    @MethodSource("ratios")
    void what_a_fault_leaves_agrees_with_the_circuit_simulator(PublishedCase c) {
        PublishedCase base = faults().filter(f -> f.id().equals("spice-" + c.text("base_point") + "_phase_open"))
                .findAny()
                .orElseThrow();
        boolean phase = c.id().endsWith("phase_open");
        BridgeWaveform healthy = settledFault(base, BridgeFault.NONE);
        BridgeWaveform faulty = settledFault(base, phase ? BridgeFault.PHASE_OPEN : BridgeFault.DIODE_OPEN);
        c.assertMatches("I_ratio", faulty.directCurrent() / healthy.directCurrent());
        c.assertMatches("P_ratio", faulty.directPower() / healthy.directPower());
        // which fault it is shows in the ripple
        assertThat(faulty.rippleAtFrequency() > faulty.rippleAtTwice()).isEqualTo(!phase);
        assertThat(healthy.rippleAtSix()).isGreaterThan(healthy.rippleAtTwice() + healthy.rippleAtFrequency());
    }

    static BridgeWaveform settledFault(PublishedCase c, BridgeFault fault) {
        BridgeTimeStepper stepper = fault(c, fault);
        stepper.run(40);
        return stepper.measure(6);
    }

    static BridgeTimeStepper fault(PublishedCase c, BridgeFault fault) {
        double speed = c.in("n") * Math.PI / 30;
        return new BridgeTimeStepper(
                AlternatorConstants.fromLeads(
                        (int) c.in("pole_pairs"),
                        EmfConstant.fromLineRms(c.in("E_LL_rms"), speed),
                        2 * c.in("R"),
                        2 * c.in("L")),
                0,
                DIODE,
                speed,
                new DcLoad.Battery(c.in("VB"), c.in("RB")),
                fault,
                1440);
    }
}
