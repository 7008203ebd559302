package org.leat.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;

/** Plants solved for screening give what the full way gives. */
class ScreeningTest {

    private static String text(String demo) {
        try {
            return Files.readString(Path.of("..", "hydro-examples", "designs", demo + ".yaml"));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Design design(String text) {
        Reading reading = DesignReader.read(text, "screening.yaml");
        assertThat(reading.problems()).isEmpty();
        return Objects.requireNonNull(reading.design());
    }

    private static final String ROWAN = text("rowan-ghyll");

    /** Changes of the text of one demo: each leaves other parts of the plant as they were. */
    private static List<Design> others() {
        List<Design> others = new ArrayList<>();
        for (String[] change : new String[][] {
            {"gross-head: 32 m ± 0.3 m", "gross-head: 41.5 m"},
            {"outside-diameter: 63 mm, sdr: 17", "outside-diameter: 50 mm, sdr: 11"},
            {"open: [ 11 mm ]", "open: [ 10 mm, 10 mm ]"},
            {"pitch-diameter: 180 mm", "pitch-diameter: 150 mm"},
            {"voltage: 21.3 V, speed: 1000 rpm", "voltage: 31 V, speed: 1000 rpm"},
            {"capacity: 200 Ah", "capacity: 80 Ah"},
            {"kept-in-stream: 1.2 L/s", "kept-in-stream: 40.2 L/s"},
            {
                "water-temperature: { lowest: 2 °C, highest: 14 °C }",
                "water-temperature: { lowest: 8 °C, highest: 20 °C }"
            },
        }) {
            assertThat(ROWAN).contains(change[0]);
            others.add(design(ROWAN.replace(change[0], change[1])));
        }
        return others;
    }

    private static List<List<Object>> fullWay(Design design) {
        return Plant.of(design).solve().running().stream()
                .map(ScreeningTest::told)
                .toList();
    }

    private static List<Object> told(Running running) {
        return List.of(
                running.nozzles(),
                running.water().flow(),
                running.water().fullPipe(),
                running.water().netHead(),
                running.water().jetPower(),
                running.operatingPoint().hold(),
                running.operatingPoint().speed(),
                running.operatingPoint().speedRatio(),
                running.operatingPoint().windingTemperature(),
                running.operatingPoint().bus().bridge(),
                running.operatingPoint().directCurrent(),
                running.operatingPoint().batteryPower());
    }

    private static List<List<Object>> screened(Screening.Outcome outcome) {
        assertThat(outcome).isInstanceOf(Screening.Solved.class);
        return ((Screening.Solved) outcome)
                .sets().stream()
                        .map(set -> List.<Object>of(
                                set.nozzles(),
                                set.flow(),
                                set.fullPipe(),
                                set.netHead(),
                                set.jetPower(),
                                set.hold(),
                                set.runnerSpeed(),
                                set.speedRatio(),
                                set.windingTemperature(),
                                set.bridgeVoltage(),
                                set.directCurrent(),
                                set.batteryPower()))
                        .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"rowan-ghyll", "ash-gill", "orchard-sluice", "first-try", "tannery-yard"})
    void every_demo_screened_near_another_gives_the_numbers_of_the_full_way(String demo) {
        Screening screening = Screening.near(Plant.of(design(ROWAN)));
        Design design = design(text(demo));
        assertThat(screened(screening.solve(design))).isEqualTo(fullWay(design)).isNotEmpty();
    }

    @Test
    void a_design_with_one_part_changed_gives_the_numbers_of_the_full_way() {
        Screening screening = Screening.near(Plant.of(design(ROWAN)));
        List<List<Object>> before = fullWay(design(ROWAN));
        List<List<List<Object>>> unlike = new ArrayList<>();
        for (Design other : others()) {
            List<List<Object>> here = screened(screening.solve(other));
            assertThat(here).isEqualTo(fullWay(other));
            if (!here.equals(before)) {
                unlike.add(here);
            }
            // from an inner loop as well, whose plant shares other things
            assertThat(screened(screening.near(other).solve(design(ROWAN)))).isEqualTo(before);
        }
        // a smaller battery has another resistance, and so does each other change move something
        assertThat(unlike).hasSizeGreaterThanOrEqualTo(7);
    }

    @Test
    void numbers_changed_without_a_design_give_those_of_the_full_way() {
        Plant plant = Plant.of(design(ROWAN));
        PlantNumbers higher = plant.numbers().withSite(plant.numbers().site().withGrossHead(50));
        Screening.Outcome outcome = Screening.near(plant).solve(higher);
        assertThat(screened(outcome))
                .isEqualTo(plant.withNumbers(higher).solve().running().stream()
                        .map(ScreeningTest::told)
                        .toList());
    }

    @Test
    void many_threads_find_what_one_finds() {
        Plant plant = Plant.of(design(ROWAN));
        Screening screening = Screening.near(plant);
        List<PlantNumbers> sites = IntStream.range(0, 400)
                .mapToObj(i -> plant.numbers()
                        .withSite(plant.numbers().site().withGrossHead(8 + 0.2 * (i % 200)))
                        .withRunner(plant.numbers().runner().withPitchDiameter(0.15 + 0.03 * (i / 200))))
                .toList();
        List<Screening.Outcome> together =
                sites.parallelStream().map(screening::solve).toList();
        Screening alone = Screening.near(Plant.of(design(ROWAN)));
        assertThat(together)
                .isEqualTo(sites.stream().map(alone::solve).toList())
                .doesNotHaveDuplicates();
    }

    @Test
    void a_plant_without_a_fall_is_not_solved_and_says_what_is_missing() {
        Plant plant = Plant.of(design(ROWAN));
        Screening screening = Screening.near(plant);
        Screening.Outcome flat =
                screening.solve(plant.numbers().withSite(plant.numbers().site().withGrossHead(0)));
        assertThat(flat)
                .isInstanceOfSatisfying(
                        Screening.Unsolved.class,
                        unsolved -> assertThat(unsolved.missing())
                                .hasSize(1)
                                .allSatisfy(
                                        missing -> assertThat(missing.path()).isEqualTo("/site/gross-head")));
        Design ice = design(ROWAN.replace("lowest: 2 °C, highest: 14 °C", "lowest: -8 °C, highest: -5 °C"));
        assertThat(screening.solve(ice)).isInstanceOf(Screening.Unsolved.class);
        assertThat(screening.meanPower(ice)).isEmpty();
    }

    @Test
    void the_set_that_gives_most_is_the_best() {
        Screening.Solved solved =
                (Screening.Solved) Screening.near(Plant.of(design(ROWAN))).solve(design(ROWAN));
        assertThat(solved.sets())
                .hasSize(3)
                .allSatisfy(set -> assertThat(set.batteryPower())
                        .isLessThanOrEqualTo(solved.best().batteryPower()));
    }

    private static double most(Plant plant, double available) {
        double most = 0;
        for (NozzleGroup set : plant.numbers().nozzles().sets()) {
            most = Math.max(
                    most, plant.solve().running(set, available).operatingPoint().batteryPower());
        }
        return most;
    }

    private static double mean(Design design) {
        OptionalDouble mean = Screening.near(Plant.of(design)).meanPower(design);
        assertThat(mean).isPresent();
        return mean.getAsDouble();
    }

    @Test
    void the_mean_of_a_duration_curve_is_straight_between_its_points() {
        Design design = design(ROWAN.replace("exceeded: 100 %, flow: 3.8 L/s", "exceeded: 96 %, flow: 3.8 L/s"));
        Plant plant = Plant.of(design);
        // 1.2 L/s stay in the bed; the curve stands at 5, 30, 60, 90 and 96 per cent
        double[] power = {
            most(plant, 39.8e-3), most(plant, 12.8e-3), most(plant, 6e-3), most(plant, 3.2e-3), most(plant, 2.6e-3)
        };
        double byHand = 0.05 * power[0]
                + 0.25 * (power[0] + power[1]) / 2
                + 0.3 * (power[1] + power[2]) / 2
                + 0.3 * (power[2] + power[3]) / 2
                + 0.06 * (power[3] + power[4]) / 2
                + 0.04 * power[4];
        assertThat(mean(design)).isCloseTo(byHand, within(1e-9)).isGreaterThan(100);
    }

    @Test
    void the_mean_of_months_counts_their_days_and_that_of_one_flow_is_its_power() {
        int from = ROWAN.indexOf("    flow:\n");
        int to = ROWAN.indexOf("intake:\n");
        String before = ROWAN.substring(0, from);
        String after = ROWAN.substring(to);
        Design constant = design(before + "    flow: 5 L/s\n" + after);
        Plant plant = Plant.of(constant);
        double atFive = most(plant, 3.8e-3);
        assertThat(mean(constant)).isEqualTo(atFive);
        Design february = design(before
                + "    flow: { kind: months, flows: [1 L/s, 5 L/s, 1 L/s, 1 L/s, 1 L/s, 1 L/s, 1 L/s, 1 L/s, 1 L/s, "
                + "1 L/s, 1 L/s, 1 L/s] }\n" + after);
        assertThat(mean(february)).isCloseTo(atFive * 28 / 365, within(1e-9));
        Design untold = design(ROWAN.substring(0, ROWAN.indexOf("  stream:\n")) + after);
        assertThat(Screening.near(plant).meanPower(untold)).isEmpty();
    }
}
