package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.leat.arbitraries.Penstocks;
import org.leat.law.Gravity;

class PartFullPenstockTest {

    private static final OpenNozzles NOZZLE = OpenNozzles.withoutBranches(List.of(0.018), 0.97, 0.97);
    private static final PenstockSection PIPE = new PenstockSection(100, 0.0792, 1e-5, 1.0);

    @Provide
    Arbitrary<SteadyPenstock> penstock() {
        return Penstocks.penstock();
    }

    @Provide
    Arbitrary<OpenNozzles> nozzles() {
        return Penstocks.nozzles();
    }

    @Property
    void the_nozzles_pass_what_the_stream_brings_and_the_filled_pipe_pays_for_it(
            @ForAll("penstock") SteadyPenstock penstock,
            @ForAll("nozzles") OpenNozzles nozzles,
            @ForAll @Scale(9) @DoubleRange(min = 1, max = 150) double head,
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 0.99) double share) {
        double full = penstock.flow(head, nozzles.conductance());
        PartFullFlow part = PartFullPenstock.evenSlope(penstock, head, share * full, nozzles, Penstocks.DENSITY);
        double jets = part.jets().stream().mapToDouble(NozzleJet::flow).sum();
        assertThat(jets).isCloseTo(share * full, within(1e-9 * full));
        double lost = part.sections().stream().mapToDouble(SectionState::loss).sum();
        assertThat(part.level())
                .isCloseTo(
                        part.manifoldHead() + lost + (part.drawsAir() ? 0 : penstock.screenLoss(share * full)),
                        within(1e-9 * head));
        assertThat(part.level()).isBetween(0.0, head);
        assertThat(part.jetPower())
                .isLessThan(penstock.solve(head, nozzles, Penstocks.DENSITY).jetPower());
    }

    @Property
    void power_never_falls_when_the_stream_brings_more(
            @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 0.98) double share) {
        SteadyPenstock penstock = new SteadyPenstock(List.of(PIPE), 0, Penstocks.VISCOSITY);
        double full = penstock.flow(40, NOZZLE.conductance());
        PartFullFlow less = PartFullPenstock.evenSlope(penstock, 40, share * full, NOZZLE, 1000);
        PartFullFlow more = PartFullPenstock.evenSlope(penstock, 40, (share + 0.01) * full, NOZZLE, 1000);
        assertThat(more.jetPower()).isGreaterThan(less.jetPower());
        assertThat(more.airLength()).isLessThan(less.airLength());
    }

    /** Flat for 100 m, then all the fall in 100 m: the surface stands in the steep length until the flow is nearly full. */
    @Test
    void the_level_falls_where_the_pipe_is_steep() {
        SteadyPenstock penstock = new SteadyPenstock(List.of(PIPE, PIPE), 0, Penstocks.VISCOSITY);
        double[] elevations = {40, 39.5, 0};
        double full = penstock.flow(40, NOZZLE.conductance());
        PartFullFlow part = PartFullPenstock.solve(penstock, elevations, 40, 0.5 * full, NOZZLE, 1000);
        assertThat(part.drawsAir()).isTrue();
        assertThat(part.filledLength()).isLessThan(100);
        assertThat(part.level()).isCloseTo(39.5 * part.filledLength() / 100, within(1e-9));
        assertThat(part.sections().get(0).loss()).isZero();
        SteadyPressures profile = SteadyPressures.running(penstock, elevations, part, 1000);
        assertThat(profile.nodes().get(0).pressure()).isZero();
        assertThat(profile.nodes().get(1).pressure()).isZero();
        assertThat(profile.nodes().get(2).pressure()).isPositive();
    }

    /** The pipe starts 2 m below the pool: a little short of water, the level falls in the intake and no air is drawn. */
    @Test
    void a_sunken_inlet_stays_covered_at_first() {
        SteadyPenstock penstock = new SteadyPenstock(List.of(PIPE), 0, Penstocks.VISCOSITY);
        double full = penstock.flow(10, NOZZLE.conductance());
        PartFullFlow covered = PartFullPenstock.solve(penstock, new double[] {8, 0}, 10, 0.95 * full, NOZZLE, 1000);
        assertThat(covered.drawsAir()).isFalse();
        assertThat(covered.airLength()).isZero();
        assertThat(covered.level()).isBetween(8.0, 10.0);
        PartFullFlow bare = PartFullPenstock.solve(penstock, new double[] {8, 0}, 10, 0.5 * full, NOZZLE, 1000);
        assertThat(bare.drawsAir()).isTrue();
    }

    @Test
    void a_stream_that_keeps_the_pipe_full_is_another_question() {
        SteadyPenstock penstock = new SteadyPenstock(List.of(PIPE), 0, Penstocks.VISCOSITY);
        double full = penstock.flow(10, NOZZLE.conductance());
        assertThatThrownBy(() -> PartFullPenstock.evenSlope(penstock, 10, 1.01 * full, NOZZLE, 1000))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_dry_stream_leaves_the_pipe_empty() {
        SteadyPenstock penstock = new SteadyPenstock(List.of(PIPE), 0, Penstocks.VISCOSITY);
        PartFullFlow dry = PartFullPenstock.evenSlope(penstock, 10, 0, NOZZLE, 1000);
        assertThat(dry.filledLength()).isZero();
        assertThat(dry.jetPower()).isZero();
        assertThat(dry.level()).isZero();
    }

    @Test
    void a_high_point_above_the_grade_line_runs_below_atmosphere() {
        SteadyPenstock penstock = new SteadyPenstock(List.of(PIPE, PIPE), 0, Penstocks.VISCOSITY);
        double flow = penstock.flow(20, NOZZLE.conductance());
        double[] elevations = {19, 20.5, 0};
        SteadyPressures running = SteadyPressures.running(penstock, elevations, 20, flow, 1000);
        assertThat(running.lowest().elevation()).isEqualTo(20.5);
        assertThat(running.lowest().pressure()).isNegative();
        SteadyPressures standing = SteadyPressures.standing(penstock, elevations, 20, 1000);
        assertThat(standing.lowest().pressure()).isCloseTo(-0.5 * 1000 * Gravity.STANDARD, within(1e-6));
        assertThat(standing.highest().pressure()).isCloseTo(20 * 1000 * Gravity.STANDARD, within(1e-6));
    }

    @Property
    void no_nozzle_beats_the_best_one(
            @ForAll("penstock") SteadyPenstock penstock,
            @ForAll @Scale(9) @DoubleRange(min = 1, max = 150) double head,
            @ForAll @Scale(9) @DoubleRange(min = 0.3, max = 3) double factor) {
        MaximumJetPower best = MaximumJetPower.of(penstock, head, 0.97, Penstocks.DENSITY);
        double bore = best.nozzleBore(1, 0.97, 1);
        double atBest = penstock.solve(head, OpenNozzles.withoutBranches(List.of(bore), 0.97, 1), Penstocks.DENSITY)
                .jetPower();
        double other = penstock.solve(
                        head, OpenNozzles.withoutBranches(List.of(bore * factor), 0.97, 1), Penstocks.DENSITY)
                .jetPower();
        assertThat(atBest).isCloseTo(best.jetPower(), within(1e-6 * atBest));
        assertThat(other).isLessThanOrEqualTo(atBest * (1 + 1e-9));
        assertThat(best.frictionShare())
                .as("1/(1+m) where loss goes with flow to the power m: 1 laminar, up to 4 where it turns")
                .isBetween(0.19, 0.51);
    }
}
