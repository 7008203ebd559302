package org.leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leat.file.DesignReader;
import org.leat.plant.Plant;
import org.leat.plant.numbers.NozzleGroup;

/** A stream as classes of flow, against looking at each day. */
class FlowClassesTest {

    private static final double YEAR = 365.2425 * 86_400;

    private static Plant demo(String name) {
        Path file = Path.of("..", "hydro-examples", "designs", name + ".yaml");
        return Plant.of(Objects.requireNonNull(DesignReader.read(file).design()));
    }

    private static double best(Plant plant, double available) {
        double best = 0;
        for (NozzleGroup set : plant.numbers().nozzles().sets()) {
            best = Math.max(
                    best, plant.solve().running(set, available).operatingPoint().batteryPower());
        }
        return best;
    }

    @Test
    void a_stream_of_one_flow_is_one_class_that_lasts_the_mean_year_of_the_calendar() {
        FlowClasses classes = FlowClasses.of(FlowSeries.constant(0.004), 0.001);
        assertThat(classes.count()).isOne();
        assertThat(classes.available(0)).isEqualTo(0.004 - 0.001);
        assertThat(classes.seconds(0)).isCloseTo(31_556_952, within(1e-3));
        Plant plant = demo("rowan-ghyll");
        assertThat(classes.made(plant)).isCloseTo(best(plant, 0.003) * YEAR, withinPercentage(1e-9));
    }

    @Test
    void months_are_twelve_classes_by_their_days_and_equal_ones_are_one() {
        List<Double> months = IntStream.range(0, 12)
                .mapToObj(m -> m == 7 ? 0.0 : m < 3 || m == 8 ? 0.009 : 0.001 * (m + 1))
                .toList();
        FlowClasses classes = FlowClasses.of(FlowSeries.ofMonths(months), 0);
        // three wet months and the ninth, of as much, are one; a dry one is one of its own
        assertThat(classes.count()).isEqualTo(9);
        assertThat(IntStream.range(0, 9).mapToDouble(classes::seconds).sum()).isCloseTo(YEAR, withinPercentage(1e-9));
        assertThat(IntStream.range(0, 9).mapToDouble(classes::available))
                .isSortedAccordingTo((a, b) -> Double.compare(b, a));
        int wet = IntStream.range(0, 9)
                .filter(i -> classes.available(i) == 0.009)
                .findFirst()
                .orElseThrow();
        assertThat(classes.seconds(wet)).isCloseTo((31 + 28 + 31 + 30) / 365.0 * YEAR, withinPercentage(1e-9));
        assertThat(classes.available(8)).isZero();
    }

    @Test
    void a_series_of_many_flows_is_told_by_24_classes_within_a_percent_of_every_day_alone() {
        TreeMap<LocalDate, Double> days = new TreeMap<>();
        for (int i = 0; i < 200; i++) {
            // from a flood to less than fills the smallest nozzle
            days.put(LocalDate.of(2030, 1, 1).plusDays(i), 0.0002 + 0.009 * Math.exp(-i / 45.0));
        }
        FlowSeries series = FlowSeries.of(days, 0);
        Plant plant = demo("orchard-sluice");
        FlowClasses classes = FlowClasses.of(series, 0.0001);
        assertThat(classes.count()).isEqualTo(FlowClasses.MOST);
        double each = 0;
        for (double flow : series.flows()) {
            each += Math.max(0, best(plant, flow - 0.0001)) * YEAR / series.days();
        }
        assertThat(each).isPositive();
        assertThat(classes.made(plant)).isCloseTo(each, withinPercentage(1));
    }

    @Test
    void no_plant_makes_more_than_its_jets_bring() {
        for (String name : List.of("ash-gill", "first-try", "orchard-sluice", "rowan-ghyll", "tannery-yard")) {
            Plant plant = demo(name);
            FlowClasses classes = FlowClasses.stated(plant.numbers().site()).orElseGet(FlowClasses::alwaysFull);
            assertThat(classes.made(plant)).as(name).isBetween(0.0, classes.ofJets(plant));
            assertThat(classes.ofJets(plant)).as(name).isPositive();
        }
    }
}
