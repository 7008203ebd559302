package org.leat.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.file.Problem;
import org.leat.file.ProblemKind;
import org.leat.file.Reading;
import org.leat.plant.cases.Closing;

/** Values that files can hold and no plant has: told where they stand, or solved in bounded work. */
class ExtremeValuesTest {

    private static final String WITH_VALVE = Plants.LEAST.replace(
            "length: 90 m", "length: 90 m\n      fittings: [ { kind: gate-valve, closing-time: 5 s } ]");

    private static Reading read(String text) {
        return DesignReader.read(text, "f");
    }

    @ParameterizedTest
    @CsvSource({
        "sdr: 17, sdr: 1500, at most 100",
        "sdr: 17, sdr: 1e-300, more than 3",
        "sdr: 17, wall: 3 nm, ''",
        "sdr: 17, wall: 3e-9 m, at least 0.00001 m",
        "gross-head: 24 m, gross-head: 1e-9 m, at least 0.01 m",
        "gross-head: 24 m, gross-head: 24 m ± 4.9e-324 m, 'a tolerance of 0, or from 0.00000001 m to 1000000 m'",
        "length: 90 m, length: 4.9e-324 m, at least 0.001 m",
        "length: 90 m, length: 1e29 m, at most 100000 m",
        "voltage: 21 V, voltage: 1e-300 V, at least 0.000001 V",
        "speed: 1000 rpm, speed: 1e25 rpm, at most 9549300 rpm",
        "resistance-between-leads: 0.2 ohm, resistance-between-leads: 1e-30 ohm, at least 0.000000001 Ω",
        "capacity: 100 Ah, capacity: 1e-9 Ah, at least 0.000000277778 Ah",
        "open: [10 mm], open: [1e-7 mm], at least 0.1 mm",
        "cells-in-series: 8, cells-in-series: 2147483647, at most 1000000000",
    })
    void a_value_no_plant_has_is_told_where_it_stands(String was, String now, String expected) {
        assertThat(Plants.LEAST).contains(was);
        Reading reading = read(Plants.LEAST.replace(was, now));
        assertThat(reading.design()).isNull();
        if (expected.isEmpty()) {
            assertThat(reading.problems()).extracting(Problem::kind).containsExactly(ProblemKind.UNKNOWN_UNIT);
            return;
        }
        assertThat(reading.problems()).hasSize(1);
        Problem problem = reading.problems().get(0);
        assertThat(problem.kind()).isEqualTo(ProblemKind.IMPOSSIBLE_VALUE);
        assertThat(problem.expected()).isEqualTo(expected);
        int line = 1
                + (int) Plants.LEAST
                        .substring(0, Plants.LEAST.indexOf(was))
                        .chars()
                        .filter(c -> c == '\n')
                        .count();
        assertThat(problem.position().line()).isEqualTo(line);
    }

    @ParameterizedTest
    @CsvSource({
        "site:, 'site:\n  gross-head: { kind: tube, steps: [ 0.0000001 m ] }'",
        "site:, 'site:\n  gross-head: { kind: tube, steps: [ -1 m ] }'",
        "site:, 'site:\n  gross-head: { kind: gauge, pressure: 0.01 Pa }'",
        "site:, 'site:\n  gross-head: { kind: clinometer, legs: [ { distance: 1 m, angle: 0.000001 deg } ] }'",
    })
    void a_head_that_readings_make_next_to_nothing_leaves_the_plant_unsolved_with_the_reason(String was, String now) {
        String text = Plants.LEAST.replace("  gross-head: 24 m\n", "").replace(was, now);
        Design design = read(text).design();
        assertThat(design).as(read(text).problems().toString()).isNotNull();
        Plant plant = Plant.of(design);
        assertThat(plant.unsolvable()).extracting(reason -> reason.path()).containsExactly("/site/gross-head");
        assertThat(plant.solve().running()).isEmpty();
        assertThat(Everything.of(design)).isPositive();
    }

    @Test
    @Timeout(value = 30, unit = TimeUnit.SECONDS)
    void a_stop_of_a_day_or_of_months_costs_no_more_than_one_of_seconds_and_presses_less() {
        double quick = highest("5 s");
        double quarterOfAnHour = highest("900 s");
        assertThat(quarterOfAnHour).isLessThan(quick);
        for (String time : new String[] {"86400 s", "12000000 s", "1e9 s"}) {
            assertThat(highest(time)).isLessThanOrEqualTo(quarterOfAnHour);
        }
    }

    private static double highest(String closingTime) {
        Design design = read(WITH_VALVE.replace("5 s", closingTime)).design();
        assertThat(design).isNotNull();
        Closing stop = Plant.of(design).solve().closing().stream()
                .filter(c -> c.cause() == Closing.Cause.VALVE)
                .findFirst()
                .orElseThrow();
        assertThat(stop.surge()).isNotNull();
        return stop.surge().sections().get(0).highest();
    }

    @Test
    @Timeout(value = 60, unit = TimeUnit.SECONDS)
    void as_many_parts_as_a_file_may_list_are_solved_in_bounded_work() {
        StringBuilder sections = new StringBuilder();
        for (int i = 0; i < 100; i++) {
            sections.append("    - { name: s").append(i).append(", length: ").append(i % 7 == 0 ? "0.01" : "2");
            sections.append(" m, pipe: { kind: polyethylene, material: pe100, outside-diameter: 63 mm, sdr: 17 } }\n");
        }
        String text = Plants.LEAST.substring(0, Plants.LEAST.indexOf("    - name: run"))
                + sections
                + Plants.LEAST.substring(Plants.LEAST.indexOf("nozzles:"));
        Design design = read(text).design();
        assertThat(design).as(read(text).problems().toString()).isNotNull();
        assertThat(Everything.of(design)).isPositive();
    }
}
