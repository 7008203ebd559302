package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A bridge whose current pauses, and one whose phases take turns, against steps in time so fine that a millionth shows; with an EMF
 * that is not one, so that it counts.
 */
class PausingBridgeTest {

    private static final double EMF = 1.3;

    /** Machine of one pole pair at 1 rad/s, lossless diodes: V' is the battery's. */
    private static BridgeWaveform stepped(double x, double r, double v, double rho, double settle) {
        BridgeTimeStepper stepper = new BridgeTimeStepper(
                new AlternatorConstants(1, EMF, r, x),
                0,
                new DiodeLine(0, 0),
                1,
                new DcLoad.Battery(v, rho),
                BridgeFault.NONE,
                30_000);
        stepper.run(settle);
        return stepper.measure(1);
    }

    private static void same(BridgeCurrents found, BridgeWaveform stepped, double close) {
        double within = close * stepped.phaseCurrentRms();
        assertThat(found.directCurrent()).isCloseTo(stepped.directCurrent(), within(within));
        assertThat(found.phaseCurrentRms()).isCloseTo(stepped.phaseCurrentRms(), within(within));
    }

    @ParameterizedTest
    @CsvSource({
        "0.5, 1.2, 1.62, 0.05",
        "0.9, 0.5, 1.64, 0.3",
        "0.26, 1, 1.6, 0.05",
        "0.7, 0.7, 1.63, 0",
        "1.1, 0.4, 1.64, 0.9",
        "1.4, 0.2, 1.655, 0.01",
        "1, 0.02, 1.645, 0",
        "0.6, 0.1, 1.635, 0.5"
    })
    void overlapping_pulses_are_those_of_fine_steps(double x, double r, double v, double rho) {
        BridgeCurrents found = OverlappingPulses.solve(EMF, x, r, v * EMF, rho);
        assertThat(found).isNotNull();
        assertThat(found.mode()).isEqualTo(ConductionMode.OVERLAPPING_PULSES);
        same(found, stepped(x, r, v * EMF, rho, 1), 2e-6);
        // what passes the d.c. side loses as much in ρ as its rms says
        if (rho > 0) {
            double power = stepped(x, r, v * EMF, rho, 1).directPower();
            double told = v * EMF * found.directCurrent() + rho * Math.pow(found.directCurrentRms(), 2);
            assertThat(told).isCloseTo(power, within(1e-5 * power));
        }
    }

    @ParameterizedTest
    @CsvSource({"0.3, 1, 1.68, 0.4", "0.5, 0.9, 1.66, 0.5", "0.2, 0.1, 1.7, 2"})
    void pulses_apart_are_those_of_fine_steps(double x, double r, double v, double rho) {
        BridgeCurrents found = OverlappingPulses.solve(EMF, x, r, v * EMF, rho);
        assertThat(found).isNotNull();
        assertThat(found.mode()).isEqualTo(ConductionMode.ISOLATED_PULSES);
        same(found, stepped(x, r, v * EMF, rho, 1), 2e-6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 3, 40})
    void currents_grow_with_emf_and_bus_alike(double times) {
        BridgeCurrents one = OverlappingPulses.solve(EMF, 1, 0.02, 1.645 * EMF, 0);
        BridgeCurrents other = OverlappingPulses.solve(times * EMF, 1, 0.02, 1.645 * times * EMF, 0);
        assertThat(one).isNotNull();
        assertThat(other).isNotNull();
        assertThat(other.mode()).isEqualTo(ConductionMode.OVERLAPPING_PULSES).isEqualTo(one.mode());
        assertThat(other.directCurrent() / times).isCloseTo(one.directCurrent(), within(1e-9));
        assertThat(other.phaseCurrentRms() / times).isCloseTo(one.phaseCurrentRms(), within(1e-9));
    }

    @Test
    void where_the_current_does_not_pause_or_the_bus_is_too_low_it_gives_none() {
        assertThat(OverlappingPulses.solve(EMF, 0.3, 1, 1.5 * EMF, 0.1)).isNull();
        assertThat(OverlappingPulses.solve(EMF, 0.3, 1, 1.4 * EMF, 0.1)).isNull();
        assertThat(OverlappingPulses.solve(EMF, 0.05, 1, 1.5 * EMF * (1 + 1e-9), 0.1))
                .isNull();
        assertThat(OverlappingPulses.solve(EMF, 1, 0.02, 1.52 * EMF, 0)).isNull();
        assertThat(OverlappingPulses.solve(EMF, 1, 0.02, 1.52 * EMF, 3)).isNull();
        // still flows after a sixth, and the next phase is not drawn on: neither overlapping nor isolated
        assertThat(OverlappingPulses.solve(EMF, 0.42, 0.0104, 1.5157 * EMF, 0.763))
                .isNull();
    }

    @ParameterizedTest
    @CsvSource({
        "0.3, 1, 1.2, 0.05, 4",
        "0.9, 0.6, 1.1, 0.4, 6",
        "0.5, 0.5, 1.35, 0, 6",
        "0.6, 0.5, 0.9, 2.5, 4",
        "0.1, 1.1, 0.4, 0.8, 3"
    })
    void the_search_comes_to_what_fine_steps_come_to(double x, double r, double v, double rho, double settle) {
        BridgeCurrents found = CommutationSearch.solve(EMF, x, r, v * EMF, rho);
        assertThat(found.mode()).isEqualTo(ConductionMode.COMMUTATION);
        BridgeWaveform fine = stepped(x, r, v * EMF, rho, settle);
        same(found, fine, 5e-6);
        double told = v * EMF * found.directCurrent() + rho * Math.pow(found.directCurrentRms(), 2);
        assertThat(told).isCloseTo(fine.directPower(), within(1e-5 * fine.directPower()));
    }

    @Test
    void the_search_meets_newton_s_steps_at_any_emf() {
        for (double emf : new double[] {0.2, 1.3, 40}) {
            for (double rho : new double[] {0, 0.05, 0.6, 6}) {
                for (double v : new double[] {0.6, 1.1, 1.4}) {
                    BridgeCurrents quick = ThreeModeBridge.solve(emf, 0.4, 0.9, v * emf, rho);
                    assertThat(quick.mode()).isEqualTo(ConductionMode.COMMUTATION);
                    BridgeCurrents slow = CommutationSearch.solve(emf, 0.4, 0.9, v * emf, rho);
                    assertThat(slow.directCurrent()).isCloseTo(quick.directCurrent(), within(1e-8 * emf));
                    assertThat(slow.directCurrentRms()).isCloseTo(quick.directCurrentRms(), within(1e-8 * emf));
                    assertThat(slow.phaseCurrentRms()).isCloseTo(quick.phaseCurrentRms(), within(1e-8 * emf));
                }
            }
        }
    }
}
