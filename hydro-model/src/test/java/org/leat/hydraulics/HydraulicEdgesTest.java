package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.leat.hydraulics.RejoiningBlows.Blow;
import org.leat.law.Answer;
import org.leat.law.Gravity;

/** Laws of water by hand, and at the very ends of what they tell apart. */
class HydraulicEdgesTest {

    @Test
    void without_a_drop_no_bore_is_wide_enough_and_the_answer_names_the_drops_that_do() {
        Answer.Outside outside = (Answer.Outside) AirInflow.leastBore(0.005, 0, 0.6, 101_325, 1.204);
        assertThat(outside.low().getAsDouble()).isEqualTo(Double.MIN_NORMAL);
        assertThat(outside.high().getAsDouble()).isCloseTo(101_325 * (1 - Math.pow(2 / 2.4, 3.5)), within(1e-6));
    }

    /**
     * Allievi's chain in its interlocked form, head against head instead of wave against wave: {@code H(i) + H(i−1) − 2 Hr =
     * (a/g) (V(i−1) − V(i))}, {@code V = τ V0 √(H/Hr)}; Parmakian, Waterhammer Analysis.
     */
    @Test
    void the_chain_of_waves_agrees_with_interlocked_heads() {
        double[] openings = {0.9, 0.8, 0.7, 0};
        double impedance = 100;
        double tank = 100;
        double head = tank;
        double velocity = 1;
        double highest = tank;
        for (int i = 0; i < openings.length; i++) {
            double least = 0;
            double most = 1000;
            for (int halving = 0; halving < 100; halving++) {
                double middle = (least + most) / 2;
                double through = openings[i] * Math.sqrt(middle / tank);
                if (middle + head - 2 * tank < impedance * (velocity - through)) {
                    least = middle;
                } else {
                    most = middle;
                }
            }
            velocity = openings[i] * Math.sqrt(least / tank);
            head = least;
            highest = Math.max(highest, head);
            double chained = Allievi.highestHead(
                    tank,
                    impedance * Gravity.STANDARD,
                    1,
                    impedance * Gravity.STANDARD / 2,
                    t -> openings[(int) Math.round(t) - 1],
                    i + 1,
                    1);
            assertThat(chained).as("after %s return times", i + 1).isCloseTo(highest, within(1e-9 * highest));
        }
        assertThat(highest).as("highest at the last step").isEqualTo(head);
    }

    /** A nozzle that opens into a head below nil draws air in: what flows back makes a wave of its own size, no more. */
    @Test
    void a_nozzle_below_nil_head_starts_no_wave_of_its_own() {
        double[] openings = {0, 1, 0, 0, 0, 0};
        double highest = Allievi.highestHead(
                50,
                100 * Gravity.STANDARD,
                1,
                50 * Gravity.STANDARD,
                t -> openings[(int) Math.round(t) - 1],
                openings.length,
                1);
        assertThat(highest).isCloseTo(50 + 100, within(1e-9));
    }

    /** Steel with a yield strength of 195 MPa, 60.3 mm outside, least wall 3.24 mm: 2 · 97.5 MPa · 3.24/60.3. */
    @Test
    void a_steel_tube_holds_half_its_yield_over_the_wall_that_is_left_and_nothing_where_none_is() {
        assertThat(Barlow.workingPressure(195e6, 0.5, 0.00324, 0, 0.0603)).isCloseTo(10.4776e6, within(100.0));
        assertThat(Barlow.workingPressure(195e6, 0.5, 0.001, 0.001, 0.0603)).isZero();
    }

    @Test
    void a_closing_that_just_keeps_the_limit_is_found_and_an_instant_one_that_just_keeps_it_is_too() {
        SurgeLine line = new SurgeLine(List.of(new SurgeSection(400, 0.0792, 310, 0.02, 55, 0)), 60);
        double flow = 0.0035;
        double twice = 2 * line.returnTime();
        double peak = SurgeStudy.shut(line, flow, twice).envelope().highestPressureHead(0);
        assertThat(ClosingTimeSearch.least(line, flow, List.of(peak), 600).orThrow())
                .isBetween(0.9 * twice, 1.02 * twice);
        double instant =
                SurgeStudy.envelope(line, flow, NozzleOpening.linear(1, 0, 0)).highestPressureHead(0);
        assertThat(ClosingTimeSearch.least(line, flow, List.of(instant), 600)).isEqualTo(Answer.of(0));
        assertThat(ClosingTimeSearch.least(line, flow, List.of(Math.nextDown(instant)), 600))
                .isNotEqualTo(Answer.of(0));
    }

    @Test
    void the_least_friction_is_laminar_where_that_may_be_and_else_the_only_one_there_is() {
        assertThat(DarcyFriction.lowest(3000, 1e-3)).isEqualTo(64 / 3000.0);
        assertThat(DarcyFriction.lowest(10_000, 1e-3)).isEqualTo(ColebrookWhite.frictionFactor(10_000, 1e-3));
        assertThat(DarcyFriction.highest(3000, 1e-3)).isEqualTo(ColebrookWhite.frictionFactor(3000, 1e-3));
        assertThat(DarcyFriction.lowest(1000, 1e-3)).isEqualTo(0.064);
    }

    @Test
    void an_even_slope_falls_with_the_length_and_ends_at_the_nozzle() {
        List<PenstockSection> sections = List.of(pipe(30), pipe(70), pipe(100));
        assertThat(Elevations.evenSlope(sections, 40)).containsExactly(40, 34, 20, 0);
        assertThat(Elevations.evenSlope(List.of(pipe(0.1), pipe(0.7), pipe(0.2)), 40)[3])
                .as("whatever rounding leaves of the length")
                .isZero();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Elevations.check(sections, new double[] {1, 0}))
                .withMessageContaining("needs 4 elevations for 3 sections");
    }

    /** 0.3 m/s in a bore of 80 mm, from memory of AWWA M51 and C605. */
    @Test
    void a_line_is_filled_no_faster_than_the_air_can_leave() {
        assertThat(Filling.greatestFlow(0.08)).isCloseTo(0.3 * Math.PI / 4 * 0.0064, within(1e-12));
        assertThat(Filling.leastTime(90)).isCloseTo(300, within(1e-9));
    }

    @Test
    void frazil_is_to_be_reckoned_with_at_minus_six_degrees_and_below() {
        assertThat(FrazilIce.possible(273.15 - 6)).isTrue();
        assertThat(FrazilIce.possible(Math.nextUp(273.15 - 6))).isFalse();
        assertThat(FrazilIce.possible(273.15)).isFalse();
    }

    @Test
    void an_envelope_is_straight_between_its_nodes_and_tells_its_time_step_and_whether_air_came_in() {
        SurgeLine line = new SurgeLine(
                List.of(
                        new SurgeSection(200, 0.0792, 310, 0.02, 58, 30),
                        new SurgeSection(200, 0.0792, 310, 0.02, 30, 0)),
                60);
        HeadEnvelope envelope = SurgeStudy.shut(line, 0.0035, 1).envelope();
        int first = envelope.firstNode(1);
        int pieces = envelope.nodes() - 1 - first;
        for (int node = 0; node <= pieces; node++) {
            double share = (double) node / pieces;
            assertThat(envelope.highestAt(1, share)).isEqualTo(envelope.highest(first + node));
            if (node < pieces) {
                double quarter = 0.75 * envelope.lowest(first + node) + 0.25 * envelope.lowest(first + node + 1);
                assertThat(envelope.lowestAt(1, share + 0.25 / pieces)).isCloseTo(quarter, within(1e-6));
            }
        }
        assertThat(envelope.airEntered()).isFalse();
        double least =
                envelope.lowest(envelope.lowestPressureNode()) - envelope.elevation(envelope.lowestPressureNode());
        assertThat(envelope.cavitates(least)).isFalse();
        assertThat(envelope.cavitates(Math.nextUp(least))).isTrue();
        assertThat(envelope.timeStep() * 310)
                .isCloseTo(envelope.distance(first + 1) - envelope.distance(first), within(1e-6));
    }

    /** Crane TP-410, appendix A: fT of clean steel pipe of 2 inches (52.5 mm, k = 0.046 mm) is 0.019. */
    @Test
    void fully_rough_friction_is_that_of_the_table_of_valves() {
        assertThat(LossCoefficient.fullyRoughFriction(0.046 / 52.5)).isCloseTo(0.019, within(0.0005));
        assertThat(LossCoefficient.fullyRoughFriction(1e-3))
                .isCloseTo(0.25 / Math.pow(3 + Math.log10(3.7), 2), within(1e-12));
    }

    /** Crane TP-410, appendix A, formulas 1 and 2: to 45° the one, above it the other; here with β² = 0.5. */
    @Test
    void a_cone_of_45_degrees_is_still_a_slender_one() {
        double small = Math.sqrt(0.5);
        double sine = Math.sin(Math.PI / 8);
        assertThat(LossCoefficient.gradualContraction(1, small, Math.PI / 4).orThrow())
                .isCloseTo(0.8 * sine * 0.5, within(1e-9));
        assertThat(LossCoefficient.gradualContraction(1, small, Math.nextUp(Math.PI / 4))
                        .orThrow())
                .isCloseTo(0.5 * Math.sqrt(sine) * 0.5, within(1e-9));
        assertThat(LossCoefficient.gradualEnlargement(small, 1, Math.PI / 4).orThrow())
                .isCloseTo(2.6 * sine * 0.25, within(1e-9));
        assertThat(LossCoefficient.gradualEnlargement(small, 1, Math.nextUp(Math.PI / 4))
                        .orThrow())
                .isCloseTo(0.25, within(1e-9));
    }

    @Test
    void a_nozzle_that_stays_a_little_open_draws_air_where_the_wave_comes_back_below_nil() {
        SurgeLine line = new SurgeLine(List.of(new SurgeSection(100, 0.05, 1000, 0.02, 0, 0)), 12);
        HeadEnvelope envelope = SurgeStudy.partlyShut(line, 0.003, 0.05, 0).envelope();
        assertThat(envelope.airEntered()).isTrue();
    }

    @Test
    void the_greatest_jet_power_is_a_summit_and_its_nozzles_bring_it_about() {
        SteadyPenstock penstock = new SteadyPenstock(List.of(pipe(200)), 0, 1.3e-6);
        MaximumJetPower best = MaximumJetPower.of(penstock, 30, 0.97, 1000);
        double summit = best.flow() * (30 - penstock.headLoss(best.flow()));
        for (double away : List.of(0.999, 1.001)) {
            double flow = best.flow() * away;
            assertThat(flow * (30 - penstock.headLoss(flow))).isLessThan(summit);
        }
        assertThat(best.jetPower()).isCloseTo(1000 * 9.80665 * summit * 0.97 * 0.97, within(1e-6 * best.jetPower()));
        assertThat(best.frictionShare()).isCloseTo(penstock.headLoss(best.flow()) / 30, within(1e-12));
        for (int nozzles : List.of(1, 3)) {
            double bore = best.nozzleBore(nozzles, 0.97, 0.8);
            OpenNozzles open = OpenNozzles.withoutBranches(Collections.nCopies(nozzles, bore), 0.97, 0.8);
            assertThat(open.conductance()).isCloseTo(best.conductance(), within(1e-9 * best.conductance()));
            assertThat(penstock.flow(30, open.conductance())).isCloseTo(best.flow(), within(1e-6 * best.flow()));
        }
        assertThat(best.isPassedBy(best.flow())).isFalse();
        assertThat(best.isPassedBy(Math.nextUp(best.flow()))).isTrue();
    }

    /** ISO 748, both methods: between two verticals one trapezium, 2 m by 0.4 m by 0.5 m/s. */
    @Test
    void two_verticals_are_enough_to_gauge_a_stream_and_one_is_not() {
        double[] banks = {0, 2};
        double[] depths = {0.3, 0.5};
        double[] velocities = {0.4, 0.6};
        assertThat(MeanSection.flow(banks, depths, velocities)).isCloseTo(2 * 0.4 * 0.5, within(1e-12));
        assertThat(MidSection.flow(banks, depths, velocities)).isCloseTo(0.3 * 0.4 + 0.5 * 0.6, within(1e-12));
        double[] one = {0};
        assertThatIllegalArgumentException().isThrownBy(() -> MeanSection.flow(one, one, one));
        assertThatIllegalArgumentException().isThrownBy(() -> MidSection.flow(one, one, one));
    }

    /** 10 mm of bore, Cv 0.97, Cc 0.64 under 24 m: √(2 g 24) = 21.70 m/s. */
    @Test
    void a_jet_is_as_thick_as_its_contraction_lets_it_be() {
        assertThat(NozzleDischarge.jetDiameter(0.64, 0.010)).isCloseTo(0.008, within(1e-12));
        assertThat(NozzleDischarge.flow(0.97, 0.64, 0.010, 24))
                .isCloseTo(0.97 * Math.sqrt(2 * 9.80665 * 24) * Math.PI / 4 * 0.008 * 0.008, within(1e-12));
    }

    @Test
    void an_opening_steps_only_beyond_the_time_of_its_step() {
        NozzleOpening step = NozzleOpening.step(0.4);
        assertThat(step.at(0)).isEqualTo(1);
        assertThat(step.at(-1)).isEqualTo(1);
        assertThat(step.at(Double.MIN_NORMAL)).isEqualTo(0.4);
        NozzleOpening table = NozzleOpening.table(new double[] {0, 1, 1, 2}, new double[] {0.9, 0.7, 0.3, 0.1});
        assertThat(table.at(0)).isEqualTo(0.9);
        assertThat(table.at(0.5)).isCloseTo(0.8, within(1e-12));
        assertThat(table.at(1)).isCloseTo(0.7, within(1e-12));
        assertThat(table.at(Math.nextUp(1.0))).isCloseTo(0.3, within(1e-12));
        assertThat(table.at(2)).isCloseTo(0.1, within(1e-12));
        assertThat(table.at(3)).isEqualTo(0.1);
    }

    /** Hm = Kb Vb²/(2g) + Vj²/(2 g Cv²), worked for each jet. */
    @Test
    void behind_a_branch_a_jet_has_what_the_branch_leaves_it() {
        OpenNozzles nozzles = new OpenNozzles(List.of(0.008, 0.010), 0.97, 0.9, 0.03, 1.2);
        List<NozzleJet> jets = nozzles.jets(24, 1000);
        double sum = 0;
        for (NozzleJet jet : jets) {
            double branch = jet.flow() / (Math.PI / 4 * 0.03 * 0.03);
            double left = 24 - 1.2 * branch * branch / (2 * 9.80665);
            assertThat(jet.head()).isCloseTo(left, within(1e-9));
            assertThat(jet.velocity()).isCloseTo(0.97 * Math.sqrt(2 * 9.80665 * left), within(1e-9));
            assertThat(jet.flow())
                    .isCloseTo(jet.velocity() * 0.9 * Math.PI / 4 * jet.bore() * jet.bore(), within(1e-12));
            sum += jet.flow();
        }
        assertThat(jets).hasSize(2);
        assertThat(nozzles.conductance() * Math.sqrt(24)).isCloseTo(sum, within(1e-12));
        assertThatIllegalArgumentException().isThrownBy(() -> OpenNozzles.withoutBranches(List.of(0.01, 0.0), 0.97, 1));
    }

    @Test
    void a_pipe_that_is_not_full_stands_as_high_as_its_nozzle_and_its_friction_need() {
        SteadyPenstock penstock = new SteadyPenstock(List.of(pipe(60), pipe(100)), 0, 1.3e-6);
        OpenNozzles nozzles = OpenNozzles.withoutBranches(List.of(0.015), 0.97, 1);
        double full = penstock.flow(30, nozzles.conductance());
        double[] elevations = {30, 24, 0};
        for (double share : List.of(0.5, 0.8, 0.97)) {
            PartFullFlow part = PartFullPenstock.solve(penstock, elevations, 30, share * full, nozzles, 1000);
            double lost =
                    part.sections().stream().mapToDouble(SectionState::loss).sum();
            assertThat(part.level()).isCloseTo(part.manifoldHead() + lost, within(1e-9));
            double low = Math.min(24, part.level()) / 24 * 100;
            double high = Math.max(0, part.level() - 24) / 6 * 60;
            assertThat(part.filledLength()).isCloseTo(low + high, within(1e-9));
            assertThat(part.airLength()).isCloseTo(160 - low - high, within(1e-9));
            assertThat(part.drawsAir()).isTrue();
        }
        PartFullFlow justFull = PartFullPenstock.solve(penstock, elevations, 30, full, nozzles, 1000);
        assertThat(justFull.level()).isCloseTo(30, within(1e-6));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PartFullPenstock.solve(penstock, elevations, 30, 1.001 * full, nozzles, 1000));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> PartFullPenstock.solve(penstock, new double[] {30, 0}, 30, 0.5 * full, nozzles, 1000));
    }

    @Test
    void between_two_openings_of_a_table_the_root_of_what_flows_is_straight() {
        PartOpenTable table =
                new PartOpenTable(new double[] {0.1, 0.5, 1}, new double[] {Double.POSITIVE_INFINITY, 4, 1});
        assertThat(table.coefficient(0.1)).isInfinite();
        assertThat(table.coefficient(0)).isInfinite();
        assertThat(table.coefficient(0.3)).isCloseTo(16, within(1e-9));
        assertThat(table.coefficient(0.5)).isCloseTo(4, within(1e-9));
        assertThat(table.coefficient(0.75)).isCloseTo(1 / (0.75 * 0.75), within(1e-9));
        assertThat(table.coefficient(1)).isCloseTo(1, within(1e-9));
    }

    @Test
    void a_piece_shorter_than_half_a_reach_joins_its_neighbour_and_a_longer_one_lasts() {
        SurgeSection run = new SurgeSection(100, 0.08, 1000, 0.02, 20, 0);
        SurgeSection longer = new SurgeSection(10, 0.08, 1000, 0.02, 21, 20);
        SurgeSection shorter = new SurgeSection(4, 0.08, 1000, 0.02, 21, 20);
        ReachGrid lasting = new ReachGrid(List.of(longer, run), 10);
        assertThat(lasting.pieces.lasting).hasSize(2);
        assertThat(lasting.nodes()).isEqualTo(13);
        assertThat(lasting.waveSpeedChange).isCloseTo(0, within(1e-9));
        assertThat(new ReachGrid(List.of(shorter, run), 10).pieces.lasting).hasSize(1);
    }

    private static GridBlows grid(double change, double... blows) {
        return new GridBlows(
                10,
                change,
                Double.NaN,
                Double.NaN,
                DoubleStream.of(blows)
                        .mapToObj(head -> new GridBlows.Blow(head, 0, new double[] {head}))
                        .toList(),
                true);
    }

    @Test
    void of_blows_on_several_grids_the_largest_counts_with_the_spread_on_top() {
        List<GridBlows> grids = List.of(grid(0.01, 60, 90, 80), grid(0.02, 61, 95, 70), grid(0, 60, 94));
        RejoiningBlows blows = new RejoiningBlows(grids, -10);
        assertThat(blows.waveSpeedChange()).isEqualTo(0.02);
        assertThat(blows.peaks(0, Blow.LATER)).containsExactly(80.0, 70.0, Double.NEGATIVE_INFINITY);
        assertThat(blows.peak(0, Blow.LATER)).isEqualTo(new RejoiningBlows.Peak(80, 10));
        assertThat(blows.agreed(0, Blow.FIRST)).isEqualTo(60);
        assertThat(blows.agreed(0, Blow.FIRST, Blow.AFTER_FIRST_CAVITY)).isEqualTo(90);
        assertThat(blows.agreed(0, Blow.LATER)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(blows.governing(0)).isEqualTo(Blow.AFTER_FIRST_CAVITY);
        assertThat(blows.highestPressureHead(0)).isEqualTo(Answer.of(100));
        assertThat(blows.settled(0)).as("5 m of 105 m").isTrue();
        assertThat(new RejoiningBlows(grids, -5).settled(0)).as("5 m of 100 m").isTrue();
        assertThat(new RejoiningBlows(grids, -4).settled(0)).as("5 m of 99 m").isFalse();
        assertThat(new RejoiningBlows(List.of(grid(0, 60, 60, 60)), -10).governing(0))
                .isEqualTo(Blow.FIRST);
    }

    private static PenstockSection pipe(double length) {
        return new PenstockSection(length, 0.08, 1e-5, 0);
    }
}
