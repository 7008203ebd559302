package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.leat.hydraulics.RejoiningBlows.Blow;
import org.leat.law.Answer;
import org.leat.law.Gravity;

/** The gas cavity model: its first blow, its limits, and what it makes of grids that disagree. */
class RejoiningColumnTest {

    private static final double BOILING = -10.13;
    private static final double BORE = 0.08;
    private static final double AREA = Math.PI / 4 * BORE * BORE;

    private static SurgeLine falling(double head, double speed, double friction) {
        return new SurgeLine(List.of(new SurgeSection(300, BORE, speed, friction, head - 1, 0)), head);
    }

    private static double flow(double surge, double speed) {
        return surge * Gravity.STANDARD / speed * AREA;
    }

    @Property(tries = 40)
    void the_first_blow_is_tank_level_and_joukowsky(
            @ForAll @DoubleRange(min = 20, max = 120) double head,
            @ForAll @DoubleRange(min = 5, max = 200) double surge) {
        SurgeLine line = falling(head, 400, 0);
        RejoiningBlows blows = RejoiningColumn.blows(line, flow(surge, 400), NozzleOpening.step(0), BOILING);
        assertThat(blows.peaks(0, Blow.FIRST))
                .allSatisfy(p -> assertThat(p).isCloseTo(head + surge, within(1e-3 * head)));
    }

    @Property(tries = 30)
    void with_friction_and_an_even_fall_nothing_exceeds_the_bound_for_a_surge_up_to_twice_the_head(
            @ForAll @DoubleRange(min = 20, max = 100) double head,
            @ForAll @DoubleRange(min = 0.2, max = 2) double m,
            @ForAll @DoubleRange(min = 0.05, max = 0.3) double lost) {
        double surge = m * (head - BOILING);
        double speed = 600;
        double velocity = surge * Gravity.STANDARD / speed;
        double friction = lost * head * 2 * Gravity.STANDARD * BORE / (300 * velocity * velocity);
        RejoiningBlows blows =
                RejoiningColumn.blows(falling(head, speed, friction), velocity * AREA, NozzleOpening.step(0), BOILING);
        for (Blow blow : Blow.values()) {
            assertThat(blows.peak(0, blow).head()).isLessThanOrEqualTo(head + surge + 2 * (head - BOILING));
        }
    }

    @Test
    void where_nothing_parts_it_is_the_method_of_characteristics() {
        SurgeLine line = new SurgeLine(
                List.of(new SurgeSection(180, 0.09, 320, 0.02, 20, 10), new SurgeSection(220, BORE, 340, 0.02, 10, 0)),
                60);
        double flow = 0.002;
        NozzleOpening opening = NozzleOpening.linear(1, 0.4, 0.7 * line.returnTime());
        HeadEnvelope waves = Characteristics.run(
                line, flow, new UpperEnd.Open(), new LowerEnd.Nozzles(opening), 400, 10 * line.returnTime());
        RejoiningBlows blows = RejoiningColumn.blows(line, flow, opening, BOILING);
        for (int i = 0; i < 2; i++) {
            assertThat(blows.highestPressureHead(i).orThrow()).isCloseTo(waves.highestPressureHead(i), within(0.4));
            assertThat(blows.settled(i)).isTrue();
        }
    }

    @Test
    void a_parted_column_strikes_harder_than_the_stop_and_all_grids_say_so() {
        RejoiningBlows blows = RejoiningColumn.blows(
                new SurgeLine(List.of(new SurgeSection(300, BORE, 1200, 0.02, 0, 0)), 50),
                flow(85, 1200),
                NozzleOpening.step(0),
                BOILING);
        RejoiningBlows.Peak second = blows.peak(0, Blow.AFTER_FIRST_CAVITY);
        double closed = ColumnSeparation.afterFirstCavity(50, 85, BOILING).orThrow();
        assertThat(second.head()).isBetween(0.93 * closed, closed).isGreaterThan(50 + 85);
        assertThat(second.spread()).isLessThan(0.01 * second.head());
        assertThat(blows.governing(0)).isNotEqualTo(Blow.FIRST);
        assertThat(blows.grids()).hasSize(3).doesNotHaveDuplicates();
        assertThat(blows.waveSpeedChange()).isZero();
        assertThat(blows.highestPressureHead(0).orThrow()).isGreaterThanOrEqualTo(second.judged());
    }

    @Test
    void one_of_two_nozzles_plugged_strikes_less_than_half_as_hard() {
        SurgeLine line = falling(60, 1000, 0.02);
        double flow = flow(60, 1000);
        double all = RejoiningColumn.blows(line, flow, NozzleOpening.step(0), BOILING)
                .highestPressureHead(0)
                .orThrow();
        double half = RejoiningColumn.blows(line, flow, NozzleOpening.step(0.5), BOILING)
                .highestPressureHead(0)
                .orThrow();
        assertThat((half - line.workingHead(flow)) / (all - line.workingHead(flow)))
                .isBetween(0.1, 0.5);
    }

    @Test
    void the_first_blow_after_a_partial_stop_is_that_of_the_characteristics() {
        SurgeLine line = falling(60, 1000, 0);
        double flow = flow(40, 1000);
        double rise = PartialStop.head(60, 1000, flow / AREA, 0.5);
        RejoiningBlows blows = RejoiningColumn.blows(line, flow, NozzleOpening.step(0.5), BOILING);
        assertThat(blows.peak(0, Blow.FIRST).head()).isCloseTo(60 + rise, within(0.01));
    }

    @Test
    void the_unit_of_area_does_not_matter_and_a_tenth_of_the_pipe_strikes_alike() {
        double thin = 0.1 * BORE;
        SurgeLine wide = falling(40, 500, 0.02);
        SurgeLine narrow = new SurgeLine(List.of(new SurgeSection(300, thin, 500, 0.002, 39, 0)), 40);
        RejoiningBlows a = RejoiningColumn.blows(wide, flow(70, 500), NozzleOpening.step(0), BOILING);
        RejoiningBlows b = RejoiningColumn.blows(narrow, flow(70, 500) / 100, NozzleOpening.step(0), BOILING);
        for (Blow blow : Blow.values()) {
            assertThat(b.peak(0, blow).head()).isCloseTo(a.peak(0, blow).head(), within(1e-6));
        }
    }

    @Test
    void air_let_in_at_open_nozzles_is_driven_out_again_before_the_water_strikes() {
        SurgeLine line = new SurgeLine(List.of(new SurgeSection(300, BORE, 1000, 0.02, 0, 0)), 10);
        double flow = flow(60, 1000);
        RejoiningBlows blows = RejoiningColumn.blows(line, flow, NozzleOpening.step(0.2), BOILING);
        double first = blows.peak(0, Blow.FIRST).head();
        assertThat(first).isGreaterThan(20);
        assertThat(blows.peak(0, Blow.LATER).head()).isLessThan(first);
        assertThat(blows.doneGrowing()).isTrue();
    }

    @Test
    void blows_that_still_grow_when_the_run_ends_give_no_number() {
        GridBlows grew = new GridBlows(
                48, 0, Double.NaN, Double.NaN, List.of(new GridBlows.Blow(90, 40, new double[] {90})), false);
        RejoiningBlows blows = new RejoiningBlows(List.of(grid(90), grew, grid(90)), BOILING);
        assertThat(blows.doneGrowing()).isFalse();
        assertThat(blows.settled(0)).isFalse();
        assertThat(blows.highestPressureHead(0)).isInstanceOf(Answer.Outside.class);
    }

    @Test
    void a_steep_pipe_may_strike_twice_as_hard_as_the_stop_though_the_nozzle_itself_never_boils() {
        SurgeLine line = falling(60, 1000, 0.02);
        RejoiningBlows blows = RejoiningColumn.blows(line, flow(60, 1000), NozzleOpening.step(0), BOILING);
        assertThat(blows.governing(0)).isEqualTo(Blow.LATER);
        assertThat(blows.settled(0)).as("three grids agree").isTrue();
        assertThat(blows.highestPressureHead(0).orThrow()).isBetween(60 + 1.8 * 60, 60 + 2.2 * 60);
    }

    @Test
    void grids_that_disagree_are_judged_by_the_largest_with_the_spread_on_top() {
        RejoiningBlows blows =
                new RejoiningBlows(List.of(grid(100, 140, 90, 150), grid(101, 141, 170), grid(100, 139, 110)), BOILING);
        assertThat(blows.peaks(0, Blow.LATER)).containsExactly(150.0, 170.0, 110.0);
        assertThat(blows.peak(0, Blow.LATER)).isEqualTo(new RejoiningBlows.Peak(170, 60));
        assertThat(blows.governing(0)).isEqualTo(Blow.LATER);
        assertThat(blows.highestPressureHead(0)).isEqualTo(Answer.of(230));
        assertThat(blows.settled(0)).isFalse();
        RejoiningBlows agree =
                new RejoiningBlows(List.of(grid(100, 140, 90), grid(101, 141, 90), grid(100, 139, 91)), BOILING);
        assertThat(agree.governing(0)).isEqualTo(Blow.AFTER_FIRST_CAVITY);
        assertThat(agree.highestPressureHead(0)).isEqualTo(Answer.of(143));
        assertThat(agree.settled(0)).isTrue();
    }

    @Test
    void a_blow_that_no_grid_had_is_none_and_never_governs() {
        RejoiningBlows blows = new RejoiningBlows(List.of(grid(100), grid(101), grid(103)), BOILING);
        assertThat(blows.peak(0, Blow.LATER)).isEqualTo(new RejoiningBlows.Peak(Double.NEGATIVE_INFINITY, 0));
        assertThat(blows.governing(0)).isEqualTo(Blow.FIRST);
        assertThat(blows.highestPressureHead(0)).isEqualTo(Answer.of(106));
    }

    @Test
    void agreement_ends_at_five_per_cent_of_the_peak_above_boiling() {
        double peak = 100 + BOILING;
        RejoiningBlows just = new RejoiningBlows(List.of(grid(peak - 5), grid(peak), grid(peak)), BOILING);
        RejoiningBlows over = new RejoiningBlows(List.of(grid(peak - 5.01), grid(peak), grid(peak)), BOILING);
        assertThat(just.settled(0)).isTrue();
        assertThat(over.settled(0)).isFalse();
    }

    private static GridBlows grid(double... peaks) {
        return new GridBlows(
                32,
                0,
                Double.NaN,
                Double.NaN,
                Arrays.stream(peaks)
                        .mapToObj(p -> new GridBlows.Blow(p, 0, new double[] {p}))
                        .toList(),
                true);
    }

    @Test
    void a_line_that_boils_before_the_stop_is_refused() {
        SurgeLine siphon = new SurgeLine(
                List.of(
                        new SurgeSection(10, BORE, 1000, 0.02, 9, 20.2),
                        new SurgeSection(50, BORE, 1000, 0.02, 20.2, 0)),
                10);
        assertThat(RejoiningColumn.wholeBefore(siphon, 0.001, BOILING)).isFalse();
        assertThat(RejoiningColumn.wholeBefore(siphon, 0.001, -10.3)).isTrue();
        assertThatThrownBy(() -> RejoiningColumn.blows(siphon, 0.001, NozzleOpening.step(0), BOILING))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("boils");
    }
}
