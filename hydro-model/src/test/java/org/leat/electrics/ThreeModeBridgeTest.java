package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.published.PublishedCase;

class ThreeModeBridgeTest {

    static Stream<CircuitPoint> points() {
        return CircuitPoint.steady();
    }

    static double off(double ours, double theirs) {
        return ours / theirs - 1;
    }

    @ParameterizedTest
    @MethodSource("points")
    void the_bridge_agrees_with_the_circuit_simulator(CircuitPoint p) {
        BridgeOperatingPoint ours = p.bus().at(p.speed());
        boolean large = p.at("Idc_A") > 3;
        assertThat(off(ours.directCurrent(), p.at("Idc_A")))
                .as("d.c. current")
                .isCloseTo(0, within(large ? 0.01 : 0.03));
        assertThat(off(ours.phaseCurrentRms(), p.at("Iph_rms_A")))
                .as("phase rms")
                .isCloseTo(0, within(large ? 0.02 : 0.03));
        assertThat(off(ours.torque(), p.at("T_brake_Nm"))).as("torque").isCloseTo(0, within(large ? 0.02 : 0.03));
        assertThat(off(ours.directPower(), p.at("P_dc_W"))).as("d.c. power").isCloseTo(0, within(large ? 0.01 : 0.03));
    }

    @Test
    void the_worst_deviations_from_the_circuit_simulator_are_printed() {
        StringBuilder out = new StringBuilder("bridge against circuit simulation (ngspice 39.3), deviation in %\n");
        double[] worst = new double[3];
        points().forEach(p -> {
            BridgeOperatingPoint ours = p.bus().at(p.speed());
            double[] d = {
                100 * off(ours.directCurrent(), p.at("Idc_A")),
                100 * off(ours.phaseCurrentRms(), p.at("Iph_rms_A")),
                100 * off(ours.torque(), p.at("T_brake_Nm"))
            };
            out.append(String.format(
                    Locale.ROOT,
                    "%-4s %8.3f A  current %+6.2f  phase rms %+6.2f  torque %+6.2f  %s%n",
                    p.id(),
                    p.at("Idc_A"),
                    d[0],
                    d[1],
                    d[2],
                    ours.mode()));
            for (int i = 0; i < 3 && p.at("Idc_A") > 3; i++) {
                worst[i] = Math.max(worst[i], Math.abs(d[i]));
            }
        });
        out.append(String.format(
                Locale.ROOT,
                "worst above 3 A: current %.2f  phase rms %.2f  torque %.2f",
                worst[0],
                worst[1],
                worst[2]));
        System.out.println(out);
        assertThat(worst[0]).isLessThan(1);
        assertThat(worst[1]).isLessThan(2);
        assertThat(worst[2]).isLessThan(2);
    }

    static Stream<PublishedCase> stored() {
        return PublishedCase.of("electrical-rectifier-ngspice")
                .filter(c -> c.text("fault").equals("none"))
                .filter(c -> Stream.of("batt", "res", "rescap").anyMatch(c.text("load")::equals));
    }

    @ParameterizedTest
    @MethodSource("stored")
    void the_averaged_model_meets_the_published_simulator_cases(PublishedCase c) {
        double speed = c.in("n") * Math.PI / 30;
        AlternatorConstants machine = AlternatorConstants.fromLeads(
                (int) c.in("pole_pairs"),
                EmfConstant.fromLineRms(c.in("E_LL_rms"), speed),
                2 * c.in("R"),
                2 * c.in("L"));
        boolean battery = c.text("load").equals("batt");
        // a capacitor holds its voltage: the bus is what the simulator settled at, the load current must follow
        boolean capacitor = c.text("load").equals("rescap");
        DiodeLine diode =
                c.has("diode") ? exponential(c.expected("Idc")) : new DiodeLine(c.in("diode_Vf0"), c.in("diode_rd"));
        BridgeOperatingPoint ours = new BatteryClamp(
                        machine,
                        0,
                        diode,
                        battery ? c.in("VB") : capacitor ? c.expected("Vdc") : 0,
                        battery ? c.in("RB") : capacitor ? 0 : c.in("RL"))
                .at(speed);
        c.assertMatches("Idc", ours.directCurrent());
        c.assertMatches("Vdc", ours.directVoltage());
        c.assertMatches("I_phase_rms", ours.phaseCurrentRms());
        c.assertMatches("P_emf", ours.airGapPower());
        c.assertMatches("P_dc", ours.directPower());
        c.assertMatches("P_copper", ours.copperLoss());
        // the simulator's figure is the rest of its balance and holds its three damping resistors of 50 kΩ too
        double clamp = ours.directVoltage() + 2 * diode.threshold();
        double emf = machine.phaseEmf(speed);
        double damping = 3 * (clamp * clamp / 4 + emf * emf / 2) / 50e3;
        c.assertMatches("P_diodes", ours.diodeLoss() + damping);
        c.assertMatches("T_brake", ours.torque());
    }

    /** The junction IS = 1 pA, N = 1.12, 5 mΩ as a line, fitted at half and full of the mean current. */
    static DiodeLine exponential(double current) {
        double thermal = 1.12 * 0.025865;
        double half = 0.5 * current;
        return DiodeLine.through(
                half,
                thermal * Math.log(half / 1e-12 + 1) + 0.005 * half,
                current,
                thermal * Math.log(current / 1e-12 + 1) + 0.005 * current);
    }

    @Test
    void a_junction_is_met_by_a_line_through_its_curve_at_working_current() {
        CircuitPoint.where(p -> p.id().endsWith("_exp")).forEach(p -> {
            BatteryClamp bus = new BatteryClamp(p.alternator(), 0, exponential(p.at("Idc_A")), p.at("VB"), p.at("RB"));
            BridgeOperatingPoint ours = bus.at(p.speed());
            assertThat(off(ours.directCurrent(), p.at("Idc_A"))).as(p.id()).isCloseTo(0, within(0.01));
            assertThat(off(ours.torque(), p.at("T_brake_Nm"))).as(p.id()).isCloseTo(0, within(0.02));
        });
    }

    @Test
    void nothing_flows_until_the_peak_line_voltage_reaches_the_bus() {
        BatteryClamp bus = new BatteryClamp(
                new AlternatorConstants(20, 0.03, 0.5, 1e-3), 0, new DiodeLine(0.8, 0.005), 25.2, 0.02);
        double cutIn = CutInSpeed.of(bus);
        assertThat(bus.at(0.9999 * cutIn).directCurrent()).isZero();
        assertThat(bus.at(0.9999 * cutIn).mode()).isEqualTo(ConductionMode.NONE);
        assertThat(bus.at(1.01 * cutIn).directCurrent()).isPositive();
        assertThat(bus.alternator().linePeak(cutIn)).isCloseTo(25.2 + 1.6, within(1e-9));
    }
}
