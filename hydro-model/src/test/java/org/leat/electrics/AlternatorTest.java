package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.published.PublishedCase;

class AlternatorTest {

    private static final double RPM = Math.PI / 30;

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("electrical-alternator");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void alternator_laws_match_their_sources(PublishedCase c) {
        switch (c.family()) {
            case "alt-kv" -> emf(c);
            case "alt-freq" -> {
                AlternatorConstants m = new AlternatorConstants((int) c.in("pole_pairs"), 0.02, 0.1, 1e-4);
                // the file gives six digits under a tolerance of 1e-9: held to the digits it gives
                c.tell("f", m.frequency(c.in("n") * RPM));
                assertThat(m.frequency(c.in("n") * RPM)).isCloseTo(c.expected("f"), within(5e-6 * c.expected("f")));
            }
            case "alt-r" -> {
                double between = CopperResistance.at(c.in("R_LL_20"), 20, c.in("T"));
                AlternatorConstants m = AlternatorConstants.fromLeads(10, 1, c.in("R_LL_20"), 1e-3)
                        .atWindingTemperature(c.in("T"));
                c.assertMatches("R_phase_star_eq", m.phaseResistance());
                c.assertMatches("R_branch_if_delta", 1.5 * between);
            }
            case "alt-sc" -> shortCircuit(c);
            case "alt-ndfeb" ->
                c.assertMatches("T_max", NeodymiumGrade.valueOf(c.text("grade")).limit());
            case "alt-insclass" ->
                c.assertMatches(
                        "T", ThermalClass.valueOf(c.text("thermal_class")).limit());
            default -> throw new AssertionError("no law bound to " + c);
        }
    }

    private static void emf(PublishedCase c) {
        double speed = c.in("n") * RPM;
        AlternatorConstants m =
                AlternatorConstants.fromLeads(7, EmfConstant.fromSpeedPerPeakVolt(c.in("kv") * RPM), 0.2, 1e-3);
        c.assertMatches("E_LL_peak", m.linePeak(speed));
        c.assertMatches("E_LL_rms", m.lineRms(speed));
        c.assertMatches("E_phase_peak", m.phaseEmf(speed));
        c.assertMatches("E_phase_rms", m.phaseEmf(speed) / Math.sqrt(2));
        c.assertMatches("Vdc_oc_peak_ideal", ReverseVoltage.openCircuit(m, speed, 1));
        c.assertMatches("Vdc_mean_ideal", SmoothCurrentBridge.idealVoltage(m.lineRms(speed)));
        c.assertMatches("psi_times_p", m.fluxLinkage() * m.polePairs());
    }

    private static void shortCircuit(PublishedCase c) {
        double speed = c.in("n") * RPM;
        double constant = EmfConstant.fromLineRms(c.in("k_LLrms"), RPM);
        AlternatorConstants m =
                AlternatorConstants.fromLeads((int) c.in("pole_pairs"), constant, 2 * c.in("R"), 2 * c.in("L"));
        c.assertMatches("I_sc_rms", ShortCircuitTorque.current(m, speed));
        c.assertMatches("I_sc_rms_limit", ShortCircuitTorque.currentLimit(m));
        c.assertMatches("T_brake", ShortCircuitTorque.torque(m, speed));
        assertThat(ShortCircuitTorque.torque(m, speed)).isLessThanOrEqualTo(ShortCircuitTorque.peak(m));
        assertThat(ShortCircuitTorque.inductance(
                        m.phaseEmf(speed),
                        ShortCircuitTorque.current(m, speed),
                        m.phaseResistance(),
                        m.electricalSpeed(speed)))
                .isCloseTo(m.phaseInductance(), within(1e-12));
    }

    @Test
    void every_way_of_measuring_the_same_machine_gives_the_same_constant() {
        double peak = 42;
        double speed = 50;
        double expected = peak / speed;
        assertThat(DoubleStream.of(
                                EmfConstant.fromLinePeak(peak, speed),
                                EmfConstant.fromLineRms(peak / Math.sqrt(2), speed),
                                EmfConstant.fromPhasePeak(peak / Math.sqrt(3), speed),
                                EmfConstant.fromPhaseRms(peak / Math.sqrt(6), speed),
                                EmfConstant.fromBridgeWithCapacitor(peak - 1.0, speed, 0.5),
                                EmfConstant.fromBridgeMean(3 / Math.PI * peak - 1.0, speed, 0.5),
                                EmfConstant.fromSpeedPerPeakVolt(speed / peak),
                                EmfConstant.fromSpeedPerRmsVolt(speed / (peak / Math.sqrt(2))))
                        .boxed())
                .allSatisfy(k -> assertThat(k).isCloseTo(expected, within(1e-12)));
    }

    @Test
    void iron_loss_from_two_readings_passes_through_both() {
        IronLoss loss = IronLoss.fromTwoReadings(6, 30, 40, 100);
        assertThat(loss.power(30)).isCloseTo(6, within(1e-9));
        assertThat(loss.power(100)).isCloseTo(40, within(1e-9));
        assertThat(IronLoss.fromCoefficients(0.02, 0.0002, 23).power(20 * Math.PI / 23))
                .isCloseTo(0.02 * 10 + 0.0002 * 100, within(1e-12));
        assertThatThrownBy(() -> IronLoss.fromTwoReadings(20, 30, 22, 100))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void coasting_from_two_times_gives_back_the_loss_that_made_them() {
        for (double eddy : new double[] {0, 1e-6, 0.001, 0.02}) {
            IronLoss made = new IronLoss(eddy > 0.01 ? 0 : 0.3, eddy);
            double first = time(made, 0.08, 150, 90);
            double second = time(made, 0.08, 90, 20);
            IronLoss found = Coasting.fromTwoTimes(0.08, 150, 90, 20, first, second);
            assertThat(found.constantTorque()).isCloseTo(made.constantTorque(), within(1e-6));
            assertThat(found.eddyTorquePerSpeed()).isCloseTo(made.eddyTorquePerSpeed(), within(1e-8));
        }
        assertThat(Coasting.fromOneTime(0.08, 150, 90, 12).power(100)).isCloseTo(0.08 * 60 / 12 * 100, within(1e-9));
        assertThatThrownBy(() -> Coasting.fromTwoTimes(0.08, 150, 90, 30, 12, 10))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Stepped in time, apart from the closed form: the middle rule in a hundred thousand steps of speed. */
    private static double time(IronLoss loss, double inertia, double from, double to) {
        double step = (from - to) / 100_000;
        double time = 0;
        for (int i = 0; i < 100_000; i++) {
            double middle = from - (i + 0.5) * step;
            time += inertia * step / loss.torque(middle);
        }
        return time;
    }

    @Test
    void a_winding_settles_where_its_heat_is_carried_off_or_not_at_all() {
        double settled = WindingTemperature.of(20, 40, 1.5).orThrow();
        assertThat(JunctionTemperature.of(20, CopperResistance.at(40, 20, settled), 1.5))
                .isCloseTo(settled, within(1e-9));
        assertThat(WindingTemperature.of(20, 200, 1.5).isValue()).isFalse();
        double withIron = WindingTemperature.of(20, 10, 40, 80, 1.5).orThrow();
        assertThat(20 + 1.5 * (10 + CopperResistance.at(40, 80, withIron))).isCloseTo(withIron, within(1e-9));
    }

    @Test
    void cold_magnets_give_more_volts_and_hot_ones_fewer() {
        assertThat(MagnetTemperature.factor(MagnetTemperature.NEODYMIUM, -10)).isCloseTo(1.036, within(1e-12));
        assertThat(MagnetTemperature.factor(MagnetTemperature.NEODYMIUM, 70)).isCloseTo(0.94, within(1e-12));
        assertThatThrownBy(() -> MagnetTemperature.factor(0.0012, 70)).isInstanceOf(IllegalArgumentException.class);
    }
}
