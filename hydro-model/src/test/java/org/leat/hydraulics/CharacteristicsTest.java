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
import org.junit.jupiter.params.provider.ValueSource;

/** The method of characteristics against closed forms, in its limits, and under refinement. */
class CharacteristicsTest {

    private static final double LENGTH = 400;
    private static final double SPEED = 310;
    private static final double BORE = 0.0792;
    private static final double HEAD = 60;
    private static final double FLOW = 0.0035;
    private static final double RETURN_TIME = 2 * LENGTH / SPEED;
    private static final double VELOCITY = FLOW / (Math.PI / 4 * BORE * BORE);

    private static SurgeLine line(double friction) {
        return new SurgeLine(List.of(new SurgeSection(LENGTH, BORE, SPEED, friction, 0, 0)), HEAD);
    }

    private static HeadEnvelope closing(SurgeLine line, NozzleOpening opening, int reaches, double duration) {
        return Characteristics.run(line, FLOW, new UpperEnd.Open(), new LowerEnd.Nozzles(opening), reaches, duration);
    }

    private static double peak(SurgeLine line, NozzleOpening opening, int reaches) {
        return closing(line, opening, reaches, opening.lastChange() + 3 * RETURN_TIME)
                .highestAt(0, 1);
    }

    @Test
    void halving_the_grid_halves_the_error() {
        SurgeLine line = line(0.04);
        NozzleOpening opening = NozzleOpening.linear(1, 0, 2 * RETURN_TIME);
        double[] peaks = new double[5];
        for (int i = 0; i < peaks.length; i++) {
            peaks[i] = peak(line, opening, 20 << i);
        }
        for (int i = 2; i < peaks.length; i++) {
            double order = Math.log(Math.abs((peaks[i - 1] - peaks[i - 2]) / (peaks[i] - peaks[i - 1]))) / Math.log(2);
            assertThat(order).as("from %s reaches", 20 << i).isBetween(0.85, 1.25);
        }
        assertThat(Math.abs(peaks[4] - peaks[3])).isLessThan(0.01);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3, 0.99, 1, 1.5, 3, 4.5, 12})
    void without_friction_it_follows_allievis_chain(double returnTimes) {
        NozzleOpening opening = NozzleOpening.linear(1, 0, returnTimes * RETURN_TIME);
        double duration = (returnTimes + 3) * RETURN_TIME;
        double chain = Allievi.highestHead(HEAD, SPEED, VELOCITY, LENGTH, opening::at, duration, 100);
        double grid = closing(line(0), opening, 50, duration).highestAt(0, 1);
        assertThat(grid).isCloseTo(chain, within(1e-9 * chain));
    }

    @Property(tries = 60)
    void an_instant_stop_without_friction_is_joukowskys_on_any_grid(
            @ForAll @DoubleRange(min = 150, max = 1450) double waveSpeed,
            @ForAll @IntRange(min = 1, max = 37) int reaches) {
        SurgeLine line = new SurgeLine(List.of(new SurgeSection(LENGTH, BORE, waveSpeed, 0, 0, 0)), HEAD);
        HeadEnvelope e = closing(line, NozzleOpening.step(0), reaches, 3 * line.returnTime());
        assertThat(e.highestAt(0, 1)).isCloseTo(HEAD + Joukowsky.head(waveSpeed, VELOCITY), within(1e-9));
        assertThat(e.lowestAt(0, 1)).isCloseTo(HEAD - Joukowsky.head(waveSpeed, VELOCITY), within(1e-9));
    }

    @Property(tries = 40)
    void a_flow_that_falls_linearly_without_friction_is_michauds(
            @ForAll @DoubleRange(min = 1, max = 12) double returnTimes) {
        double time = returnTimes * RETURN_TIME;
        HeadEnvelope e = Characteristics.run(
                line(0), FLOW, new UpperEnd.Open(), new LowerEnd.FallingFlow(time), 60, time + 2 * RETURN_TIME);
        double michaud = Michaud.head(LENGTH, VELOCITY, time, SPEED).orThrow();
        assertThat(e.highestAt(0, 1)).isCloseTo(HEAD + michaud, within(1e-9 * HEAD));
    }

    @Property(tries = 40)
    void friction_packs_the_line_but_never_beyond_tank_level_plus_joukowsky(
            @ForAll @DoubleRange(min = 0.01, max = 0.05) double friction) {
        SurgeLine line = line(friction);
        double peak = peak(line, NozzleOpening.step(0), 50);
        assertThat(peak)
                .isGreaterThan(line.workingHead(FLOW) + Joukowsky.head(SPEED, VELOCITY))
                .isLessThan(LinePacking.highestHead(HEAD, SPEED, VELOCITY));
    }

    @Property(tries = 30)
    void a_slower_valve_never_makes_a_higher_peak(@ForAll @DoubleRange(min = 0.2, max = 8) double returnTimes) {
        SurgeLine line = line(0.02);
        double faster = peak(line, NozzleOpening.linear(1, 0, returnTimes * RETURN_TIME), 40);
        double slower = peak(line, NozzleOpening.linear(1, 0, 1.3 * returnTimes * RETURN_TIME), 40);
        assertThat(slower).isLessThanOrEqualTo(faster + 0.01);
        assertThat(slower).isGreaterThan(line.workingHead(FLOW));
    }

    @Test
    void a_plant_left_alone_stays_as_it_is() {
        HeadEnvelope e = closing(line(0.02), NozzleOpening.unchanged(), 50, 10 * RETURN_TIME);
        for (int node = 0; node < e.nodes(); node++) {
            double steady = HEAD - (HEAD - line(0.02).workingHead(FLOW)) * e.distance(node) / LENGTH;
            assertThat(e.highest(node)).isCloseTo(steady, within(1e-9));
            assertThat(e.lowest(node)).isCloseTo(steady, within(1e-9));
        }
    }

    @Test
    void a_joint_between_equal_pipes_is_no_joint() {
        SurgeSection half = new SurgeSection(LENGTH / 2, BORE, SPEED, 0.02, 0, 0);
        SurgeLine two = new SurgeLine(List.of(half, half), HEAD);
        NozzleOpening opening = NozzleOpening.linear(1, 0.2, RETURN_TIME);
        HeadEnvelope one = closing(line(0.02), opening, 60, 20);
        HeadEnvelope parts = closing(two, opening, 60, 20);
        assertThat(parts.highestAt(1, 1)).isCloseTo(one.highestAt(0, 1), within(1e-9));
        assertThat(parts.highestAt(0, 0.5)).isCloseTo(one.highestAt(0, 0.25), within(1e-9));
        assertThat(parts.lowestAt(1, 0)).isCloseTo(one.lowestAt(0, 0.5), within(1e-9));
    }

    @Test
    void uneven_sections_need_only_a_small_change_of_wave_speed() {
        SurgeLine uneven = new SurgeLine(
                List.of(
                        new SurgeSection(37, 0.0968, 290, 0.02, 60, 55),
                        new SurgeSection(211, 0.0792, 311, 0.02, 55, 20),
                        new SurgeSection(89, 0.0614, 402, 0.02, 20, 0)),
                HEAD);
        HeadEnvelope e = closing(uneven, NozzleOpening.step(0), 100, 10);
        assertThat(e.waveSpeedChange()).isPositive().isLessThan(0.01);
        assertThat(e.nodes()).isBetween(103, 153);
        assertThat(e.elevation(e.firstNode(1))).isEqualTo(55);
        assertThat(e.distance(e.nodes() - 1)).isCloseTo(337, within(1e-9));
    }

    @Test
    void a_blocked_inlet_draws_air_through_the_nozzles_and_pulls_the_upper_line_below_the_atmosphere() {
        HeadEnvelope e = Characteristics.run(
                line(0.02),
                FLOW,
                new UpperEnd.Shutting(0),
                new LowerEnd.Nozzles(NozzleOpening.unchanged()),
                100,
                20 * RETURN_TIME);
        assertThat(e.airEntered()).isTrue();
        assertThat(e.lowestAt(0, 1)).isCloseTo(0, within(1e-12));
        assertThat(e.lowestPressureHead(0)).isNegative();
    }

    @Test
    void a_high_point_boils_where_the_same_line_lying_flat_does_not() {
        SurgeSection flat = new SurgeSection(LENGTH, BORE, SPEED, 0.02, 0, 0);
        SurgeSection high = new SurgeSection(LENGTH / 2, BORE, SPEED, 0.02, 58, 55);
        SurgeSection rest = new SurgeSection(LENGTH / 2, BORE, SPEED, 0.02, 55, 0);
        double vapour = VapourHead.of(1228, 101_325, 999.7);
        assertThat(vapour).isEqualTo(-10.2, within(0.1));
        assertThat(closing(new SurgeLine(List.of(flat), HEAD), NozzleOpening.step(0), 100, 10)
                        .cavitates(vapour))
                .isFalse();
        HeadEnvelope e = closing(new SurgeLine(List.of(high, rest), HEAD), NozzleOpening.step(0), 100, 10);
        assertThat(e.cavitates(vapour)).isTrue();
        assertThat(e.elevation(e.lowestPressureNode())).isBetween(50.0, 58.0);
        assertThat(e.highestPressureHead(1)).isGreaterThan(80);
    }

    @Test
    void losses_of_fittings_spread_along_a_section_take_the_same_head() {
        SurgeSection plain = new SurgeSection(LENGTH, BORE, SPEED, 0.02, 0, 0);
        double expected = plain.resistance() + 3 / (2 * 9.80665 * plain.area() * plain.area());
        assertThat(plain.withFittings(3).resistance()).isCloseTo(expected, within(1e-9 * expected));
    }

    @Test
    void impossible_runs_are_refused() {
        assertThatThrownBy(() -> closing(line(0.02), NozzleOpening.step(0), 0, 10))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> closing(line(0.9), NozzleOpening.step(0), 10, 10))
                .as("friction beyond the head")
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> NozzleOpening.table(new double[] {0, 2, 1}, new double[] {1, 0.5, 0}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new UpperEnd.Shutting(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SurgeLine(List.of(), 60)).isInstanceOf(IllegalArgumentException.class);
    }
}
