package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.law.Answer;

/** Water that runs, settles, is gauged or is stopped, worked by hand. */
class WaterByHandTest {

    private static final double GRAVITY = 9.80665;

    private static Answer slug(double... conductivities) {
        double[] times = new double[conductivities.length];
        for (int i = 0; i < times.length; i++) {
            times[i] = 10 * i;
        }
        return SaltSlug.flow(2, 0.5, 0.01, times, conductivities);
    }

    /** Rises 0, 0.04, 0.02, 0 S/m at steps of 10 s are 0.6 s·S/m; 2 kg over 0.5 kg/m³ per S/m times that. */
    @Test
    void salt_is_counted_by_trapezia_over_the_background_until_it_has_passed() {
        assertThat(slug(0.01, 0.05, 0.03, 0.01).orThrow()).isCloseTo(2 / (0.5 * 0.6), within(1e-9));
        assertThat(slug(0.01, 0.05, 0.0115).isValue()).isTrue();
        Answer.Outside running = (Answer.Outside) slug(0.01, 0.05, 0.014);
        assertThat(running.value()).isCloseTo(0.1, within(1e-9));
        assertThat(running.high().getAsDouble()).isEqualTo(0.05);
        Answer.Outside none = (Answer.Outside) slug(0.01, 0.01);
        assertThat(none.input()).isEqualTo("peak rise of conductivity");
        assertThat(none.value()).isZero();
        assertThat(slug(0.05, 0.01).isValue())
                .as("two readings, the first the peak")
                .isTrue();
        assertThatIllegalArgumentException().isThrownBy(() -> slug(0.01));
        assertThat(SaltSlug.relativeUncertainty(0.03, 0.04, 0)).isCloseTo(0.05, within(1e-12));
    }

    /** B = a/(g A): at a joint 2 B2/(B1 + B2) of the rise goes on. */
    @Test
    void a_stop_goes_up_a_line_of_several_bores_joint_by_joint() {
        SurgeLine line = new SurgeLine(
                List.of(
                        new SurgeSection(100, 0.2, 1000, 0.02, 20, 10),
                        new SurgeSection(100, 0.1, 1200, 0.02, 10, 5),
                        new SurgeSection(100, 0.08, 400, 0.02, 5, 0)),
                50);
        double[] impedance = {
            1000 / (GRAVITY * Math.PI / 4 * 0.04),
            1200 / (GRAVITY * Math.PI / 4 * 0.01),
            400 / (GRAVITY * Math.PI / 4 * 0.0064)
        };
        double third = impedance[2] * 0.004;
        double second = third * 2 * impedance[1] / (impedance[1] + impedance[2]);
        double first = second * 2 * impedance[0] / (impedance[0] + impedance[1]);
        List<Double> rises = SeriesStop.firstPass(line, 0.004, 0);
        assertThat(rises).hasSize(3);
        assertThat(rises.get(2)).isCloseTo(third, within(1e-9));
        assertThat(rises.get(1)).isCloseTo(second, within(1e-9));
        assertThat(rises.get(0)).isCloseTo(first, within(1e-9));
        SurgeSection whole = line.sections().get(0);
        assertThat(SeriesStop.firstPass(new SurgeLine(List.of(whole), 50), 0.004, 0))
                .containsExactly(impedance[0] * 0.004);
    }

    /** A piece of 1 m sends its wave back in 2 · 1/1000 s. */
    @Test
    void a_piece_whose_wave_is_back_sooner_than_asked_rises_with_its_neighbour() {
        SurgeLine line = new SurgeLine(
                List.of(
                        new SurgeSection(100, 0.1, 1000, 0, 0, 0),
                        new SurgeSection(1, 0.05, 1000, 0, 0, 0),
                        new SurgeSection(100, 0.08, 1000, 0, 0, 0)),
                50);
        List<Double> each = SeriesStop.firstPass(line, 0.004, 0.0019);
        assertThat(each.get(1)).isNotEqualTo(each.get(0)).isNotEqualTo(each.get(2));
        List<Double> joined = SeriesStop.firstPass(line, 0.004, 0.0021);
        assertThat(joined.get(1)).isIn(joined.get(0), joined.get(2));
    }

    /** The finest grain sinks its depth in the time the water takes: w = Q/(L B). */
    @Test
    void the_finest_grain_that_a_basin_catches_sinks_as_fast_as_the_water_passes_over_its_floor() {
        double viscosity = 1.3e-6;
        double grain = SettlingVelocity.finestGrainCaught(0.004, 1.8, 0.9, viscosity);
        assertThat(SettlingVelocity.ofSand(grain, viscosity)).isCloseTo(0.004 / (1.8 * 0.9), within(1e-9));
        assertThat(grain).isBetween(4e-5, 8e-5);
    }

    private static NozzleJet jet(double flow, double head, double velocity, double power) {
        return new NozzleJet(0.01, 0.01, flow, head, velocity, power);
    }

    @Test
    void of_several_jets_head_and_velocity_are_weighted_by_flow() {
        SteadyFlow flow = new SteadyFlow(
                0.004, 30, 0.1, 27, List.of(), List.of(jet(0.001, 24, 20, 200), jet(0.003, 20, 16, 300)));
        assertThat(flow.netHead()).isCloseTo(21, within(1e-12));
        assertThat(flow.frictionShare()).isCloseTo(0.3, within(1e-12));
        assertThat(flow.jetVelocity()).isCloseTo(17, within(1e-12));
        assertThat(flow.jetPower()).isEqualTo(500);
        SteadyFlow still = new SteadyFlow(0, 30, 0, 30, List.of(), List.of());
        assertThat(still.netHead()).isEqualTo(30);
        assertThat(still.jetVelocity()).isZero();
        assertThat(still.frictionShare()).isZero();
        assertThat(new SteadyFlow(0, 0, 0, 0, List.of(), List.of()).frictionShare())
                .isZero();
    }

    private static final double[] ELEVATIONS = {28, 12, 0};

    private static SteadyPenstock penstock() {
        return new SteadyPenstock(
                List.of(new PenstockSection(60, 0.1, 1e-5, 0.5), new PenstockSection(100, 0.06, 1e-5, 1)), 2e4, 1.3e-6);
    }

    /** p = ρ g (H − hs − losses − V²/2g − z) at each joint, V the faster of its two pipes. */
    @Test
    void pressure_along_a_running_pipe_is_the_head_left_less_what_moves() {
        SteadyPenstock penstock = penstock();
        double flow = 0.004;
        List<SectionState> states = penstock.states(flow);
        SteadyPressures pressures = SteadyPressures.running(penstock, ELEVATIONS, 30, flow, 1000);
        double[] velocities = {
            states.get(0).velocity(), states.get(1).velocity(), states.get(1).velocity()
        };
        double head = 30 - 2e4 * flow * flow;
        double distance = 0;
        for (int i = 0; i < 3; i++) {
            double moving = velocities[i] * velocities[i] / (2 * GRAVITY);
            SteadyPressures.Node node = pressures.nodes().get(i);
            assertThat(node.pressure()).isCloseTo(1000 * GRAVITY * (head - moving - ELEVATIONS[i]), within(1e-6));
            assertThat(node.distance()).isEqualTo(distance);
            if (i < 2) {
                assertThat(states.get(i).loss())
                        .isEqualTo(states.get(i).frictionLoss() + states.get(i).fittingsLoss())
                        .isGreaterThan(states.get(i).frictionLoss());
                head -= states.get(i).loss();
                distance += i == 0 ? 60 : 100;
            }
        }
        assertThat(states.get(1).velocity()).isGreaterThan(states.get(0).velocity());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SteadyPressures.running(penstock, new double[] {28, 0}, 30, flow, 1000));
    }

    @Test
    void above_the_surface_of_a_part_full_pipe_is_the_air_s_pressure() {
        SteadyPenstock penstock = penstock();
        OpenNozzles nozzles = OpenNozzles.withoutBranches(List.of(0.015), 0.97, 1);
        double full = penstock.flow(30, nozzles.conductance());
        PartFullFlow part = PartFullPenstock.solve(penstock, ELEVATIONS, 30, 0.85 * full, nozzles, 1000);
        SteadyPressures pressures = SteadyPressures.running(penstock, ELEVATIONS, part, 1000);
        assertThat(part.drawsAir()).isTrue();
        assertThat(part.level()).isBetween(12.0, 28.0);
        double lost = part.sections().stream().mapToDouble(SectionState::loss).sum();
        double velocity = part.sections().get(1).velocity();
        double moving = velocity * velocity / (2 * GRAVITY);
        double joint = part.manifoldHead() + lost - part.sections().get(0).loss() - moving - 12;
        assertThat(pressures.nodes().get(0).pressure()).isZero();
        assertThat(pressures.nodes().get(1).pressure()).isCloseTo(1000 * GRAVITY * joint, within(1e-6));
        assertThat(pressures.nodes().get(2).pressure())
                .isCloseTo(1000 * GRAVITY * (part.manifoldHead() - moving), within(1e-6));
    }

    /** GUM, table G.2: t = 4.30 for two degrees of freedom; readings 1, 2, 6 scatter by √7 about 3. */
    @Test
    void readings_are_worth_their_scatter_times_student_s_factor() {
        Estimate mean = StudentT.mean(1, 2, 6);
        assertThat(mean.value()).isEqualTo(3);
        assertThat(mean.plusMinus().orElseThrow()).isCloseTo(4.303 * Math.sqrt(7.0 / 3), within(0.001));
    }

    /** Michaud: 2 L Q/(g A T) beyond the return time, never above Joukowsky. */
    @Test
    void the_closed_form_of_a_stop_is_joukowsky_within_the_return_time_and_michaud_beyond() {
        SurgeLine line = new SurgeLine(List.of(new SurgeSection(400, 0.0792, 310, 0.02, 55, 0)), 60);
        double area = Math.PI / 4 * 0.0792 * 0.0792;
        double flow = 0.0035;
        double atOnce = 60 + line.joukowskyHead(flow);
        assertThat(SurgeStudy.shut(line, flow, line.returnTime()).closedFormHead())
                .isEqualTo(atOnce);
        double slow = 3 * line.returnTime();
        assertThat(SurgeStudy.shut(line, flow, slow).closedFormHead())
                .isCloseTo(60 + 2 * 400 * flow / (GRAVITY * area * slow), within(1e-9))
                .isLessThan(atOnce);
        SurgeResult result = SurgeStudy.shut(line, flow, 1);
        double least = Double.POSITIVE_INFINITY;
        for (int node = 0; node < result.envelope().nodes(); node++) {
            least = Math.min(
                    least, result.envelope().lowest(node) - result.envelope().elevation(node));
        }
        assertThat(result.lowestPressureHead()).isEqualTo(least).isNotZero();
    }

    @Test
    void an_inlet_that_shuts_pulls_the_upper_pipe_below_the_air_s_pressure_and_a_vent_does_not_let_it() {
        SurgeLine line = new SurgeLine(List.of(new SurgeSection(100, 0.0792, 310, 0.02, 28, 0)), 30);
        double flow = 0.0035;
        SurgeResult shut = SurgeStudy.inletShut(line, flow, 0);
        SurgeResult vented = SurgeStudy.inletShutVented(line, flow, 0);
        assertThat(shut.closedFormHead()).isEqualTo(30);
        assertThat(shut.highestHead()).isLessThanOrEqualTo(30 + 1e-9);
        // at once: the head falls by a V/g
        double fall = 310 * flow / (GRAVITY * Math.PI / 4 * 0.0792 * 0.0792);
        assertThat(shut.envelope().lowest(0)).isLessThanOrEqualTo(30 - fall + 0.5);
        assertThat(vented.envelope().lowest(0)).isCloseTo(28, within(0.01));
    }

    @Test
    void head_share_of_a_valve_is_its_velocity_head_and_of_a_needle_the_nozzle_s() {
        double velocity = 0.003 / (Math.PI / 4 * 0.05 * 0.05);
        assertThat(ValveClosing.headShare(ValveKind.GATE, 0.003, 0.05, 25, 30))
                .isCloseTo(velocity * velocity / (2 * GRAVITY) / 30, within(1e-12));
        assertThat(ValveClosing.headShare(ValveKind.NEEDLE, 0.003, 0.05, 25, 30))
                .isCloseTo(25.0 / 30, within(1e-12));
    }

    @Test
    void the_whole_flow_is_stopped_in_the_whole_time_and_less_in_a_part_of_it() {
        for (ValveKind kind : ValveKind.values()) {
            double share = kind == ValveKind.NEEDLE ? 0.9 : 0.01;
            assertThat(ValveClosing.greatestStop(kind, share, 1)).isEqualTo(1);
            assertThat(ValveClosing.greatestStop(kind, share, 1 - kind.idleTravel()))
                    .isEqualTo(1);
            double half = ValveClosing.greatestStop(kind, share, 0.5);
            assertThat(half).isBetween(0.5, 1.0);
            assertThat(ValveClosing.greatestStop(kind, share, 0.02)).isLessThan(half);
            assertThat(ValveClosing.effectiveTime(kind, share, 10, 10)).isEqualTo(10);
            assertThat(ValveClosing.effectiveTime(kind, share, 20, 10))
                    .isCloseTo(10 / ValveClosing.greatestStop(kind, share, 0.5), within(1e-9));
            NozzleOpening opening = ValveClosing.opening(kind, share, 10, 0.2);
            assertThat(opening.at(0)).isEqualTo(1);
            assertThat(opening.at(5)).isCloseTo(0.2 + 0.8 * ValveClosing.flowShare(kind, share, 0.5), within(0.01));
            assertThat(opening.at(10)).isCloseTo(0.2, within(1e-9));
            assertThat(opening.lastChange()).isCloseTo(10 * (1 - kind.idleTravel()), within(1e-9));
        }
    }

    /** Vinson: 5.05e21 s^−4.906 with s in psi; 10 bar in SDR 17 is a hoop stress of 8 MPa, 1160 psi. */
    @Test
    void a_pipe_of_pvc_lasts_its_cycles_over_how_often_they_come() {
        double cycles = 5.05e21 * Math.pow(8e6 / 6894.757293168, -4.906);
        double seconds = VinsonCycles.life(1e6, 17, 1000).orThrow();
        assertThat(seconds / (365.25 * 86_400)).isCloseTo(cycles / 1000, within(0.002 * cycles / 1000));
        assertThat(VinsonCycles.life(1e7, 17, 1000)).isInstanceOf(Answer.Outside.class);
    }

    @ParameterizedTest
    @CsvSource({
        "UPSTREAM_ONLY, 0.8, 0.85",
        "NO_AXIAL_MOVEMENT, 0.84, 0.84",
        "EXPANSION_JOINTS, 1, 0.8",
    })
    void a_wall_is_held_as_texts_of_today_and_of_before_say(WallRestraint restraint, double today, double before) {
        assertThat(restraint.factor(0.4)).isCloseTo(today, within(1e-12));
        assertThat(restraint.olderFactor(0.4)).isCloseTo(before, within(1e-12));
    }

    /** 10 ± 1 and 14 ± 1: mean 12, spread 2.77 times wider (Birge) than 1/√2. */
    @Test
    void measurements_that_contradict_each_other_are_worth_less() {
        Estimate mean = WeightedMean.of(List.of(Estimate.of(10, 1.0), Estimate.of(14, 1.0)));
        assertThat(mean.value()).isCloseTo(12, within(1e-12));
        double birge = Math.sqrt(2 * Math.pow(2 * 1.96, 2));
        assertThat(mean.plusMinus().orElseThrow()).isCloseTo(birge / Math.sqrt(2), within(0.05));
    }

    /** Half the rating may come and go, and the top of it may be the rating itself. */
    @Test
    void a_pressure_that_recurs_is_held_up_to_half_the_rating() {
        assertThat(RecurringPressure.rangeShare(9e5, 5e5, 10e5)).isCloseTo(0.8, within(1e-12));
        assertThat(RecurringPressure.withstands(10e5, 5e5, 10e5)).isTrue();
        assertThat(RecurringPressure.withstands(10e5, 4.9e5, 10e5)).isFalse();
        assertThat(RecurringPressure.withstands(10.1e5, 8e5, 10e5)).isFalse();
    }

    /** Table of the angle from open: 5.47 at 30°, 106 at 55°; a needle opens as x (2 − x). */
    @Test
    void a_ball_valve_and_a_needle_open_as_tabled() {
        assertThat(BallValveLoss.coefficient(1 - 30 / 90.0)).isCloseTo(5.47, within(1e-9));
        assertThat(BallValveLoss.coefficient(1 - 55 / 90.0)).isCloseTo(106, within(1e-6));
        assertThat(BallValveLoss.coefficient(BallValveLoss.IDLE)).isInfinite();
        assertThat(NeedleOpening.share(0.25)).isCloseTo(0.4375, within(1e-12));
        assertThat(NeedleOpening.share(1)).isEqualTo(1);
    }

    @Test
    void a_part_full_pipe_tells_of_its_jets_what_a_full_one_does() {
        PartFullFlow part = new PartFullFlow(
                0.004, 22, 100, 60, true, 21, List.of(), List.of(jet(0.001, 24, 20, 200), jet(0.003, 20, 16, 300)));
        assertThat(part.netHead()).isCloseTo(21, within(1e-12));
        assertThat(part.jetVelocity()).isCloseTo(17, within(1e-12));
        assertThat(part.jetPower()).isEqualTo(500);
    }
}
