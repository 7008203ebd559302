package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Steps with the circuit eliminated, against the same steps of the circuit itself. */
class ConductionTest {

    private static final double STEP = 0.1;
    private static final DcLoad.Battery BATTERY = new DcLoad.Battery(1.1, 0.4);
    private static final double SAME = 1e-12;

    /** EMFs that bring every state of the rails that two or three phases can be in. */
    private static final double[][] ALL = {
        {2, 0, -2}, {2, -2, 0}, {0, 2, -2}, {0, -2, 2}, {-2, 2, 0}, {-2, 0, 2},
        {2, 1, -3}, {2, -3, 1}, {-3, 2, 1}, {3, -1, -2}, {-1, 3, -2}, {-1, -2, 3}
    };

    private static double free(PhaseSet phases, Conduction by, double a, double b, double rail) {
        double[] emf = {a, b, -a - b};
        double star = 0;
        for (int k = 0; k < 3; k++) {
            star += phases.rail(k) == 0 ? 0 : phases.rise(k) + (phases.rail(k) > 0 ? rail : 0) - emf[k];
        }
        return emf[by.free] + star / 2;
    }

    @ParameterizedTest
    @EnumSource(BridgeFault.class)
    void a_step_and_the_free_phase_are_those_of_the_circuit(BridgeFault fault) {
        int threes = 0;
        int twos = 0;
        for (double[] on : ALL) {
            PhaseSet phases = PhaseSetTest.phases(fault, false);
            phases.switchOn(on[0], on[1], on[2], 1);
            if (phases.conducting() < 2) {
                continue;
            }
            Conduction by = new Conduction(phases, STEP, BATTERY);
            assertThat(by.count).isEqualTo(phases.conducting());
            double mean = (0.7 + 0.2 * phases.rail(1)) / by.count;
            double[] i = new double[3];
            for (int k = 0; k < 3; k++) {
                i[k] = phases.rail(k) == 0 ? 0 : 0.3 * (k + 1) + mean;
            }
            double rest = (i[0] + i[1] + i[2]) / by.count;
            for (int k = 0; k < 3; k++) {
                i[k] -= phases.rail(k) == 0 ? 0 : rest;
            }
            phases.flow(i[0], i[1], i[2]);
            double direct = phases.directCurrent();
            double rail = BATTERY.voltage() + BATTERY.resistance() * direct;
            phases.step(STEP, 1.2, 0.3, -1.5, rail, 0.9, 0.7, -1.6, BATTERY.voltage(), BATTERY.resistance());
            phases.accept();
            double then = by.directKept * direct + by.directFromA * 2.1 + by.directFromB * 1.0 + by.directConstant;
            assertThat(then).isCloseTo(phases.directCurrent(), within(SAME));
            for (int k = 0; k < 3; k++) {
                double next = by.kept * i[k]
                        + by.fromA[k] * 2.1
                        + by.fromB[k] * 1.0
                        + by.constant[k]
                        - by.yielding[k] * (direct + then);
                assertThat(next).as("%s, phase %d", on, k).isCloseTo(phases.current(k), within(SAME));
            }
            if (by.count == 2) {
                twos++;
                assertThat(phases.rail(by.free)).isZero();
                double here = by.freeFromA * 1.2 + by.freeFromB * 0.3 + by.freeConstant + by.freeFromRail * rail;
                assertThat(here).isCloseTo(free(phases, by, 1.2, 0.3, rail), within(SAME));
            } else {
                threes++;
                assertThat(by.free).isEqualTo(-1);
            }
        }
        assertThat(twos).as("states of two").isPositive();
        assertThat(threes > 0).as("states of three").isEqualTo(fault != BridgeFault.PHASE_OPEN);
    }

    @Test
    void where_nothing_conducts_nothing_is_free() {
        Conduction by = new Conduction(PhaseSetTest.phases(BridgeFault.NONE, false), STEP, BATTERY);
        assertThat(by.count).isZero();
        assertThat(by.free).isEqualTo(-1);
        assertThat(by.fromA).containsExactly(0, 0, 0);
        assertThat(by.constant).containsExactly(0, 0, 0);
        assertThat(by.directFromA).isZero();
    }

    @Test
    void sines_are_those_of_their_angles_and_a_third_behind_is_120_degrees() {
        Sines sines = new Sines(36);
        assertThat(sines.whole()).hasSize(36);
        for (int k = 0; k < 36; k++) {
            assertThat(sines.whole()[k]).isCloseTo(Math.sin(Math.toRadians(10 * k)), within(1e-14));
            assertThat(sines.between()[k]).isCloseTo(Math.sin(Math.toRadians(10 * k - 5)), within(1e-14));
            assertThat(sines.whole()[sines.third(k)]).isCloseTo(Math.sin(Math.toRadians(10 * k - 120)), within(1e-14));
        }
    }
}
