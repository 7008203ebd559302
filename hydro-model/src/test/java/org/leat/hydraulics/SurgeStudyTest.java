package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.law.Answer;
import org.leat.published.PublishedCase;

/** Surges that a penstock must stand, and the searches built on them. */
class SurgeStudyTest {

    private static final double VAPOUR_HEAD = -10.2;
    private static final double FLOW = 0.0035;

    /** The line of most published cases. */
    private static SurgeLine line() {
        return new SurgeLine(List.of(new SurgeSection(400, 0.0792, 310, 0.02, 55, 0)), 60);
    }

    static List<PublishedCase> closings() {
        return PublishedCase.of("hydraulics-transient")
                .filter(c -> List.of("mif", "mif2", "ml0", "mlf", "mls", "mpl").contains(c.family()))
                .filter(c -> c.text("what").equals("max"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("closings")
    void a_coarser_grid_and_shorter_run_still_meet_the_published_peaks(PublishedCase c) {
        SurgeLine line =
                new SurgeLine(List.of(new SurgeSection(c.in("L"), c.in("D"), c.in("a"), c.in("f"), 0, 0)), c.in("Hr"));
        SurgeResult r = SurgeStudy.partlyShut(line, c.in("Q0"), c.in("tau1"), c.in("Tc"));
        c.assertMatches(r.envelope().highestAt(0, c.in("x_rel")));
        assertThat(r.closedFormHead()).isGreaterThanOrEqualTo(r.highestHead() - 1e-9);
    }

    @Test
    void a_full_stop_is_bounded_by_line_packing_and_a_slow_one_lies_far_below() {
        SurgeResult fast = SurgeStudy.shut(line(), FLOW, 1);
        assertThat(fast.closedFormHead()).isEqualTo(82.46, within(0.01));
        assertThat(fast.highestHead()).isBetween(81.9, fast.closedFormHead());
        assertThat(SurgeStudy.shut(line(), FLOW, 40).highestHead()).isLessThan(62);
    }

    @Test
    void plugging_one_of_two_nozzles_makes_about_half_of_joukowsky() {
        SurgeResult r = SurgeStudy.plugged(line(), FLOW, 0.5);
        double rise = r.highestHead() - line().workingHead(FLOW);
        assertThat(rise / line().joukowskyHead(FLOW)).isBetween(0.45, 0.6);
        assertThat(r.highestHead())
                .as("higher up the line than at the nozzle")
                .isGreaterThan(r.envelope().highestAt(0, 1));
    }

    @Property(tries = 40)
    void a_partial_stop_lies_between_none_and_joukowsky(
            @ForAll @DoubleRange(min = 0, max = 1) double left,
            @ForAll @DoubleRange(min = 5, max = 150) double head,
            @ForAll @DoubleRange(min = 0.2, max = 3) double velocity) {
        double rise = PartialStop.head(head, 310, velocity, left);
        double whole = Joukowsky.head(310, velocity);
        assertThat(rise).isBetween(-1e-9, (1 - left) * whole + 1e-9);
        double through = left * velocity * Math.sqrt(1 + rise / head);
        assertThat(Joukowsky.head(310, velocity - through)).isCloseTo(rise, within(1e-9 * whole));
    }

    @Property(tries = 20)
    void shutting_the_inlet_never_lifts_the_head_above_the_tank_and_drags_it_below_the_ground(
            @ForAll @IntRange(min = 0, max = 20) int seconds) {
        SurgeResult r = SurgeStudy.inletShut(line(), FLOW, seconds);
        assertThat(r.highestHead()).isLessThanOrEqualTo(r.closedFormHead() + 1e-9);
        assertThat(r.lowestPressureHead()).isLessThan(-55);
        assertThat(r.lowestPressureHead(0, VAPOUR_HEAD)).isInstanceOf(Answer.Outside.class);
    }

    @Property(tries = 20)
    void a_vent_below_the_inlet_valve_keeps_the_upper_end_at_the_atmosphere(
            @ForAll @IntRange(min = 0, max = 20) int seconds) {
        SurgeResult bare = SurgeStudy.inletShut(line(), FLOW, seconds);
        SurgeResult vented = SurgeStudy.inletShutVented(line(), FLOW, seconds);
        HeadEnvelope e = vented.envelope();
        assertThat(e.lowestAt(0, 0) - e.elevation(0)).isBetween(-1e-9, 1e-9);
        assertThat(vented.lowestPressureHead()).isGreaterThan(bare.lowestPressureHead() + 30);
        assertThat(vented.highestHead()).isLessThanOrEqualTo(vented.closedFormHead() + 1e-9);
    }

    @Test
    void opening_draws_the_head_down_and_never_swings_above_joukowsky() {
        SurgeResult r = SurgeStudy.opened(line(), FLOW, 1);
        assertThat(r.envelope().lowestAt(0, 1)).isEqualTo(39.93, within(0.2));
        assertThat(r.highestHead()).isBetween(60.0, r.closedFormHead());
    }

    @Test
    void where_the_water_boils_there_is_no_peak_to_state() {
        SurgeSection high = new SurgeSection(200, 0.0792, 310, 0.02, 58, 55);
        SurgeSection rest = new SurgeSection(200, 0.0792, 310, 0.02, 55, 0);
        SurgeLine humped = new SurgeLine(List.of(high, rest), 60);
        SurgeResult fast = SurgeStudy.shut(humped, FLOW, 0);
        assertThat(fast.highestPressureHead(1, VAPOUR_HEAD)).isInstanceOf(Answer.Outside.class);
        SurgeResult slow = SurgeStudy.shut(humped, FLOW, 40);
        assertThat(slow.highestPressureHead(1, VAPOUR_HEAD).orThrow()).isBetween(60.0, 62.0);
        assertThat(slow.lowestPressureHead(0, VAPOUR_HEAD).orThrow()).isBetween(0.0, 5.0);
    }

    @Property(tries = 12)
    void the_least_closing_time_keeps_the_limit_and_a_shorter_one_does_not(
            @ForAll @DoubleRange(min = 62, max = 80) double limit) {
        double time = ClosingTimeSearch.least(line(), FLOW, List.of(limit), 600).orThrow();
        assertThat(SurgeStudy.shut(line(), FLOW, time).envelope().highestPressureHead(0))
                .isLessThanOrEqualTo(limit);
        assertThat(SurgeStudy.shut(line(), FLOW, time / 1.02).envelope().highestPressureHead(0))
                .isGreaterThan(limit);
    }

    @Test
    void no_closing_time_helps_a_pipe_that_standing_water_overloads_and_none_is_needed_by_a_strong_one() {
        assertThat(ClosingTimeSearch.least(line(), FLOW, List.of(59.0), 100)).isInstanceOf(Answer.Outside.class);
        assertThat(ClosingTimeSearch.least(line(), FLOW, List.of(90.0), 100)).isEqualTo(Answer.of(0));
        assertThatThrownBy(() -> ClosingTimeSearch.least(line(), FLOW, List.of(), 100))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_very_slow_closing_of_a_short_steel_line_is_still_resolved() {
        SurgeLine steel = new SurgeLine(List.of(new SurgeSection(60, 0.0829, 1230, 0.022, 0, 0)), 60);
        SurgeResult r = SurgeStudy.shut(steel, 0.0045, 120);
        assertThat(r.envelope().nodes()).isGreaterThanOrEqualTo(25);
        assertThat(r.highestHead()).isBetween(60.0, 60.2);
    }

    @Test
    void suction_loads_a_pipe_up_to_full_vacuum_and_tells_the_wall_that_stands_it() {
        assertThat(SuctionLoad.pressure(5, 999.7, 101_325, 1228)).isZero();
        assertThat(SuctionLoad.pressure(-3, 1000, 101_325, 1228)).isEqualTo(29_419.95, within(0.01));
        double vacuum = SuctionLoad.pressure(-30, 1000, 101_325, 1228);
        assertThat(vacuum).isEqualTo(101_325 - 1228);
        double ratio = RingBuckling.greatestRatio(200e6, 0.45, 0.03, 2, vacuum);
        assertThat(RingBuckling.allowed(200e6, 0.45, ratio, 0.03, 2)).isEqualTo(vacuum, within(1e-6 * vacuum));
        assertThat(ratio).isBetween(11.0, 17.0);
    }
}
