package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Runs on a battery without measuring take whole steps together; measured, each is written out. Both must come to the same. */
class WholeStepsTest {

    private static final double SAME = 1e-9;

    private static BridgeTimeStepper begun(BridgeFault fault, double degrees, double clamp, double rho) {
        double psi = Math.toRadians(degrees);
        return new BridgeTimeStepper(
                new AlternatorConstants(1, 1, Math.cos(psi), Math.sin(psi)),
                0.01,
                new DiodeLine(0.03, 0.004),
                1,
                new DcLoad.Battery(clamp, rho),
                fault,
                360);
    }

    @ParameterizedTest
    @EnumSource(BridgeFault.class)
    void whole_steps_taken_together_come_to_the_same_as_each_written_out(BridgeFault fault) {
        for (double degrees : new double[] {5, 40, 80}) {
            for (double clamp : new double[] {0, 0.4, 1.2, 1.6, 2}) {
                for (double rho : new double[] {0, 0.3}) {
                    BridgeTimeStepper together = begun(fault, degrees, clamp, rho);
                    BridgeTimeStepper each = begun(fault, degrees, clamp, rho);
                    together.run(7.3);
                    each.measure(7.3);
                    assertThat(together.time()).isCloseTo(each.time(), within(SAME));
                    BridgeTimeStepper copy = together.copy();
                    double torque = together.torque(2);
                    BridgeWaveform expected = each.measure(2);
                    BridgeWaveform found = copy.measure(2);
                    assertThat(torque).isCloseTo(expected.torque(), within(SAME));
                    assertThat(found.torque()).isCloseTo(expected.torque(), within(SAME));
                    assertThat(found.directCurrent()).isCloseTo(expected.directCurrent(), within(SAME));
                    assertThat(found.phaseCurrentRms()).isCloseTo(expected.phaseCurrentRms(), within(SAME));
                    assertThat(found.rippleAtFrequency()).isCloseTo(expected.rippleAtFrequency(), within(SAME));
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(BridgeFault.class)
    void a_run_begun_at_another_speed_is_that_of_a_new_one(BridgeFault fault) {
        BridgeTimeStepper other = begun(fault, 30, 0.5, 0.1).at(1.5);
        BridgeTimeStepper fresh = new BridgeTimeStepper(
                new AlternatorConstants(1, 1, Math.cos(Math.toRadians(30)), Math.sin(Math.toRadians(30))),
                0.01,
                new DiodeLine(0.03, 0.004),
                1.5,
                new DcLoad.Battery(0.5, 0.1),
                fault,
                360);
        other.run(5);
        fresh.run(5);
        assertThat(other.measure(1)).isEqualTo(fresh.measure(1));
    }
}
