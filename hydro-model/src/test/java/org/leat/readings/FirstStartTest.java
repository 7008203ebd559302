package org.leat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leat.plant.Plant;
import org.leat.readings.Channel.ReadingKind;
import org.leat.readings.FirstStart.StartStep;
import org.leat.readings.FirstStart.StartStep.Kind;
import org.leat.readings.FirstStart.StartStep.Line;
import org.leat.readings.FirstStart.StopLimit;

class FirstStartTest {

    private static final List<StopLimit> LIMITS = List.of(
            new StopLimit(ReadingKind.SPEED, 300, "alternator/overspeed"),
            new StopLimit(ReadingKind.SPEED, 250, "another"),
            new StopLimit(ReadingKind.BATTERY_VOLTS, 20, "regulator/set-points"));

    private static List<StartStep> steps(String demo) {
        return FirstStart.of(Expectations.of(DemoPlants.of(demo)), LIMITS);
    }

    @Test
    void the_steps_come_in_the_order_of_a_careful_person_and_the_smallest_nozzle_first() {
        assertThat(steps("rowan-ghyll"))
                .extracting(step -> step.kind() + " " + step.nozzles())
                .containsExactly(
                        "FILL ",
                        "PRESSURE_TEST ",
                        "STANDING ",
                        "OPEN_LEADS 9 mm",
                        "DUMP_LOAD 9 mm",
                        "FIRST_ON_BUS 9 mm",
                        "NEXT_ON_BUS 11 mm",
                        "NEXT_ON_BUS 11.5 mm",
                        "HOURS 11 mm");
    }

    @Test
    void without_a_dump_load_at_the_bridge_nothing_is_run_without_the_battery() {
        assertThat(steps("first-try")).extracting(StartStep::kind).doesNotContain(Kind.DUMP_LOAD);
    }

    @Test
    void the_standing_pressure_is_that_of_the_fall() {
        Line line = steps("ash-gill").stream()
                .filter(step -> step.kind() == Kind.STANDING)
                .findFirst()
                .orElseThrow()
                .lines()
                .get(0);
        // by hand: 999.7 kg/m³ · 9.80665 m/s² · 25 m
        assertThat(line.expected()).isCloseTo(245_093, within(50.0));
        assertThat(line.low()).isLessThan(line.expected());
        assertThat(line.high()).isGreaterThan(line.expected());
    }

    private static Line pressureTest(String demo) {
        return steps(demo).stream()
                .filter(step -> step.kind() == Kind.PRESSURE_TEST)
                .findFirst()
                .orElseThrow()
                .lines()
                .get(0);
    }

    /** EN 805, 11.3.2 (from memory): 1.5 times, and 5 bar more at most, of standing pressure with 2 bar of surge. */
    @Test
    void a_pipe_whose_blows_are_not_settled_is_tested_at_its_standing_pressure_and_a_surge_allowed_for() {
        Line line = pressureTest("rowan-ghyll");
        // by hand: (999.97 kg/m³ · 9.80665 m/s² · 32 m + 2 bar) · 1.5
        assertThat(line.expected()).isCloseTo(1.5 * (999.97 * 9.80665 * 32 + 200_000), within(100.0));
        assertThat(line.stop()).hasValue(10e5);
    }

    /** EN 805, 11.3.2 (from memory): a bar above the highest pressure, surges computed. */
    @Test
    void a_pipe_whose_blows_are_settled_is_tested_a_bar_above_the_highest() {
        Plant plant = DemoPlants.of("ash-gill");
        double highest = plant.solve().closing().stream()
                .filter(stop -> !stop.cause().atIntake())
                .flatMap(stop -> IntStream.range(
                                0, plant.numbers().penstock().sections().size())
                        .mapToObj(i -> stop.peak(i).highest()))
                .mapToDouble(peak -> peak.or(Double.NaN))
                .max()
                .orElseThrow();
        assertThat(pressureTest("ash-gill").expected()).isCloseTo(highest + 100_000, within(1.0));
    }

    @Test
    void the_pipe_is_filled_at_a_third_of_a_metre_a_second_at_most() {
        Line flow = steps("ash-gill").get(0).lines().get(0);
        // bore of 63 mm SDR 17: 63 − 2 · 3.8 mm and a mean wall a little more; 0.3 m/s · π/4 · d²
        assertThat(flow.expected()).isBetween(0.3 * Math.PI / 4 * 0.0548 * 0.0548, 0.3 * Math.PI / 4 * 0.0556 * 0.0556);
    }

    @Test
    void the_strictest_limit_of_a_reading_stops_and_one_below_what_is_expected_is_marked() {
        List<Line> lines = steps("ash-gill").stream()
                .filter(step -> step.kind() == Kind.FIRST_ON_BUS)
                .findFirst()
                .orElseThrow()
                .lines();
        Line speed = line(lines, ReadingKind.SPEED);
        assertThat(speed.stop()).hasValue(250);
        assertThat(speed.rule()).isEqualTo("another");
        assertThat(speed.beyond()).isFalse();
        assertThat(line(lines, ReadingKind.BATTERY_VOLTS).beyond()).isFalse();
        assertThat(line(lines, ReadingKind.FLOW).stop()).isEmpty();
    }

    private static Line line(List<Line> lines, ReadingKind what) {
        return lines.stream()
                .filter(line -> line.name().equals(what.name()))
                .findFirst()
                .orElseThrow();
    }
}
