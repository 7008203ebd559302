package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Phases on their rails: when one is taken on and let go, and steps against the loops of the circuit written out by hand. */
class PhaseSetTest {

    private static final double INDUCTANCE = 0.7;
    private static final double RESISTANCE = 0.3;
    private static final double THRESHOLD = 0.25;
    private static final double RAIL = 1;
    private static final double STEP = 0.125;

    static PhaseSet phases(BridgeFault fault, boolean backward) {
        return new PhaseSet(INDUCTANCE, RESISTANCE, THRESHOLD, fault, backward);
    }

    private static PhaseSet sound() {
        return phases(BridgeFault.NONE, false);
    }

    private static int[] rails(PhaseSet phases) {
        return new int[] {phases.rail(0), phases.rail(1), phases.rail(2)};
    }

    private static double[] currents(PhaseSet phases) {
        return new double[] {phases.current(0), phases.current(1), phases.current(2)};
    }

    @ParameterizedTest
    @CsvSource({
        // fault, EMFs, rails after
        "NONE, 1, -0.5, -0.5, 0, 0, 0",
        "NONE, 1.125, -0.5, -0.625, 1, 0, -1",
        "NONE, 2, 1, -3, 1, 1, -1",
        "NONE, 3, -1, -2, 1, -1, -1",
        "NONE, -3, 2, 1, -1, 1, 1",
        "DIODE_OPEN, 2, -1, -1, 0, 0, 0",
        "DIODE_OPEN, 2, 1, -3, 0, 1, -1",
        "DIODE_OPEN, -3, 2, 1, -1, 1, 1",
        "PHASE_OPEN, 3, -1, -2, 0, 0, 0",
        "PHASE_OPEN, 2, 1, -3, 0, 1, -1",
        "PHASE_OPEN, -3, 2.5, 0.5, 0, 1, -1",
        "DIODE_SHORT, 0, 0.25, -0.25, 1, 0, 0",
        "DIODE_SHORT, 0, 0.375, -0.375, 1, 1, 0",
        "DIODE_SHORT, 0, 0, -1.25, 1, 0, 0",
        "DIODE_SHORT, 0, 0, -1.375, 1, 0, -1"
    })
    void the_pair_farthest_apart_is_taken_on_where_it_exceeds_rail_and_two_thresholds(
            BridgeFault fault, double a, double b, double c, int ofA, int ofB, int ofC) {
        PhaseSet phases = phases(fault, false);
        phases.switchOn(a, b, c, RAIL);
        assertThat(rails(phases)).containsExactly(ofA, ofB, ofC);
    }

    /** Between two that conduct the third stands at 3e/2 + rail/2. */
    @ParameterizedTest
    @CsvSource({"0.5, 0", "0.5625, 1", "-0.5, 0", "-0.5625, -1", "0, 0"})
    void a_third_phase_is_taken_on_beyond_a_threshold_off_either_rail(double third, int side) {
        PhaseSet phases = sound();
        phases.switchOn(2, 0, -2, RAIL);
        assertThat(rails(phases)).containsExactly(1, 0, -1);
        phases.switchOn(2, third, -2 - third, RAIL);
        assertThat(rails(phases)).containsExactly(1, side, -1);
    }

    @ParameterizedTest
    @EnumSource(BridgeFault.class)
    void what_would_be_taken_on_is_what_is_taken_on(BridgeFault fault) {
        int taken = 0;
        for (double rail : new double[] {0, 1}) {
            for (double a = -3; a <= 3; a += 0.125) {
                for (double b = -3; b <= 3; b += 0.125) {
                    PhaseSet phases = phases(fault, false);
                    int before = phases.conducting();
                    boolean would = phases.wouldSwitchOn(a, b, -a - b, rail);
                    phases.switchOn(a, b, -a - b, rail);
                    assertThat(would).as("%s %s at %s", a, b, rail).isEqualTo(phases.conducting() > before);
                    taken += would ? 1 : 0;
                }
            }
        }
        assertThat(taken).isBetween(1000, 4790);
    }

    @Test
    void less_than_a_pair_carries_nothing() {
        PhaseSet phases = sound();
        phases.flow(1, 2, -3);
        phases.step(STEP, 9, -4, -5, 0, 9, -4, -5, 1, 0.1);
        phases.accept();
        assertThat(currents(phases)).containsExactly(0, 0, 0);
    }

    private static double loop(PhaseSet p, double[] emf, double[] current, double rail, int j, int k) {
        double push = emf[j] - p.rise(j) - (p.rail(j) > 0 ? rail : 0) - RESISTANCE * current[j];
        return push - (emf[k] - p.rise(k) - (p.rail(k) > 0 ? rail : 0) - RESISTANCE * current[k]);
    }

    /** L Δi/h of every loop is the mean of its pushes at both ends of the step, or that at the end alone. */
    private static void holdsByLoops(BridgeFault fault, double[] on, boolean backward) {
        PhaseSet phases = phases(fault, backward);
        phases.switchOn(on[0], on[1], on[2], RAIL);
        int m = phases.conducting();
        double[] before = new double[3];
        double sum = 0;
        for (int k = 0; k < 3; k++) {
            before[k] = phases.rail(k) == 0 ? 0 : 0.3 + 0.2 * k;
            sum += before[k];
        }
        for (int k = 0; k < 3; k++) {
            before[k] -= phases.rail(k) == 0 ? 0 : sum / m;
        }
        phases.flow(before[0], before[1], before[2]);
        double[] e0 = {1.2, 0.3, -1.5};
        double[] e1 = {0.9, 0.7, -1.6};
        double alpha = 1.1;
        double beta = 0.4;
        phases.step(STEP, e0[0], e0[1], e0[2], RAIL, e1[0], e1[1], e1[2], alpha, beta);
        phases.accept();
        double[] after = currents(phases);
        assertThat(after[0] + after[1] + after[2]).isCloseTo(0, within(1e-12));
        double direct = 0;
        for (int k = 0; k < 3; k++) {
            direct += phases.rail(k) > 0 ? after[k] : 0;
            assertThat(phases.before(k)).isEqualTo(before[k]);
        }
        assertThat(phases.directCurrent()).isEqualTo(direct);
        for (int j = 0; j < 3; j++) {
            for (int k = 0; k < j; k++) {
                if (phases.rail(j) != 0 && phases.rail(k) != 0) {
                    double end = loop(phases, e1, after, alpha + beta * direct, j, k);
                    double push = backward ? end : 0.5 * (end + loop(phases, e0, before, RAIL, j, k));
                    double rise = after[j] - before[j] - (after[k] - before[k]);
                    assertThat(INDUCTANCE * rise / STEP).isCloseTo(push, within(1e-12));
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void every_step_holds_in_every_loop(boolean backward) {
        double[][] states = {{2, 0, -2}, {0, -2, 2}, {-2, 2, 0}, {2, 1, -3}, {1, -3, 2}, {-3, 1, 2}, {3, -1, -2}};
        for (double[] on : states) {
            holdsByLoops(BridgeFault.NONE, on, backward);
            holdsByLoops(BridgeFault.DIODE_SHORT, on, backward);
        }
        holdsByLoops(BridgeFault.PHASE_OPEN, new double[] {0, 2, -2}, backward);
        holdsByLoops(BridgeFault.DIODE_OPEN, new double[] {-3, 2, 1}, backward);
    }

    /** A trial step of three phases at a state of our own choice, and what follows from it. */
    private static PhaseSet trial(PhaseSet phases, double a, double b, double drive) {
        phases.flow(a, b, -a - b);
        phases.step(STEP, 0, 0, 0, RAIL, 0, 0, 0, drive, 0);
        return phases;
    }

    @Test
    void the_first_current_to_end_cuts_the_step_where_its_straight_line_passes_nil() {
        PhaseSet phases = sound();
        phases.switchOn(2, 1, -3, RAIL);
        trial(phases, 0.01, 0.02, 3);
        double ofA = 0.01 / (0.01 - phases.before(0));
        double ofB = 0.02 / (0.02 - phases.before(1));
        assertThat(ofA).isBetween(0.0, 1.0);
        assertThat(ofB).isBetween(ofA, 1.0);
        assertThat(phases.partUntilZero()).isEqualTo(ofA);
        PhaseSet other = sound();
        other.switchOn(1, 2, -3, RAIL);
        trial(other, 0.02, 0.01, 3);
        assertThat(other.partUntilZero()).isCloseTo(ofA, within(1e-12));
        double left = 0.5 * (other.before(0) - other.before(2));
        other.accept();
        assertThat(rails(other)).containsExactly(1, 0, -1);
        assertThat(currents(other)).containsExactly(left, 0, -left);
    }

    @Test
    void of_a_pair_both_are_let_go_together_but_for_one_that_is_tied() {
        PhaseSet phases = sound();
        phases.switchOn(2, 0, -2, RAIL);
        trial(phases, 0.01, 0, 3);
        double part = phases.partUntilZero();
        assertThat(part).isCloseTo(0.01 / (0.01 - phases.before(0)), within(1e-12));
        phases.accept();
        assertThat(rails(phases)).containsExactly(0, 0, 0);
        assertThat(currents(phases)).containsExactly(0, 0, 0);
        PhaseSet tied = phases(BridgeFault.DIODE_SHORT, false);
        tied.switchOn(2, 0, -2, RAIL);
        assertThat(rails(tied)).containsExactly(1, -1, -1);
        PhaseSet pair = phases(BridgeFault.DIODE_SHORT, false);
        pair.switchOn(0.5, 0.5, -1, RAIL);
        assertThat(rails(pair)).containsExactly(1, 0, -1);
        trial(pair, 0.01, 0, 3);
        assertThat(pair.partUntilZero()).isLessThan(1);
        pair.accept();
        assertThat(rails(pair)).containsExactly(1, 0, 0);
        assertThat(currents(pair)).containsExactly(0, 0, 0);
    }

    @Test
    void a_step_in_which_no_current_ends_is_whole() {
        PhaseSet phases = sound();
        phases.switchOn(2, 1, -3, RAIL);
        assertThat(trial(phases, 4, 5, 3).partUntilZero()).isEqualTo(1);
        phases.accept();
        assertThat(phases.conducting()).isEqualTo(3);
        assertThat(phases.heldWay(0)).isEqualTo(1);
        assertThat(phases.heldWay(2)).isEqualTo(-1);
    }

    @Test
    void a_current_that_just_reaches_nil_goes_on_and_one_just_below_is_cut_within_the_step() {
        PhaseSet still = new PhaseSet(1, 0, 0, BridgeFault.NONE, false);
        still.switchOn(2, 1, -3, 0);
        still.step(STEP, 0, 0, 0, 0, 0, 0, 0, 0, 0);
        assertThat(still.partUntilZero()).isEqualTo(1);
        PhaseSet pair = new PhaseSet(1, 0, 0, BridgeFault.NONE, false);
        pair.switchOn(2, 0, -2, 0);
        // i falls by h·rail/2L
        pair.flow(STEP / 2 * (1 - 1e-9), 0, -STEP / 2 * (1 - 1e-9));
        pair.step(STEP, 0, 0, 0, 1, 0, 0, 0, 1, 0);
        assertThat(pair.before(0)).isNegative();
        assertThat(pair.partUntilZero()).isEqualTo(0.999999);
    }

    @Test
    void a_tied_phase_carries_current_both_ways() {
        PhaseSet tied = phases(BridgeFault.DIODE_SHORT, false);
        tied.switchOn(2, 1, -3, RAIL);
        assertThat(rails(tied)).containsExactly(1, 0, -1);
        assertThat(tied.heldWay(0)).isZero();
        PhaseSet back = phases(BridgeFault.DIODE_SHORT, false);
        back.switchOn(-3, 1, 2, RAIL);
        assertThat(rails(back)).containsExactly(1, 1, 1);
        back.flow(-0.5, 0.2, 0.3);
        back.step(STEP, -3, 1, 2, RAIL, -3, 1, 2, RAIL, 0);
        assertThat(back.before(0)).isNegative();
        assertThat(back.partUntilZero()).isEqualTo(1);
    }

    @Test
    void a_copied_state_goes_on_like_the_one_it_was_taken_from() {
        PhaseSet phases = sound();
        phases.switchOn(2, 1, -3, RAIL);
        trial(phases, 0.01, 0.02, 3).partUntilZero();
        PhaseSet copy = sound();
        copy.set(phases);
        assertThat(copy.before(0)).isEqualTo(phases.before(0)).isNotZero();
        assertThat(copy.current(1)).isEqualTo(0.02);
        copy.accept();
        phases.accept();
        assertThat(rails(copy)).containsExactly(0, 1, -1).containsExactly(rails(phases));
        assertThat(currents(copy)).containsExactly(currents(phases));
        assertThat(phases.threshold()).isEqualTo(THRESHOLD);
        assertThat(phases.inductance()).isEqualTo(INDUCTANCE);
        assertThat(phases.resistance()).isEqualTo(RESISTANCE);
    }
}
