package org.leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.design.Chemistry;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.plant.Plant;
import org.leat.plant.loads.DailyUse;
import org.leat.plant.loads.LoadNumbers;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;

class YearTest {

    private static final NozzleGroup SET = new NozzleGroup("all", List.of(0.01), true);

    private static Plant demo(String name) {
        Path file = Path.of("..", "hydro-examples", "designs", name + ".yaml");
        return Plant.of(Objects.requireNonNull(DesignReader.read(file).design()));
    }

    /** The same year by other means: one list, energy in watt hours, no months, the set found anew each visit. */
    private static double[] byAnotherLoop(
            FlowSeries series, PowerTable table, LoadDay loads, YearBattery bank, double kept, int visit) {
        double capacity = bank.energy() / 3600;
        double content = bank.start() * capacity;
        double made = 0;
        double missing = 0;
        double dumped = 0;
        List<Integer> chosen = new ArrayList<>();
        for (int hour = 0; hour < series.days() * 24; hour++) {
            int day = hour / 24;
            double water = Math.max(0, series.flow(day) - kept);
            if (hour % (24 * visit) == 0) {
                int best = 0;
                for (int i = 0; i < table.sets().size(); i++) {
                    if (table.power(i, water, 0.5) > table.power(best, water, 0.5)) {
                        best = i;
                    }
                }
                chosen.add(best);
            }
            double in = table.power(chosen.get(chosen.size() - 1), water, content / capacity);
            double out = loads.watts(hour % 24);
            made += in;
            double left = in - out;
            if (left > 0) {
                double into = Math.min(bank.mostCharging(), Math.min(left, (capacity - content) / bank.efficiency()));
                content += into * bank.efficiency();
                dumped += left - into;
            } else {
                double from = Math.min(-left, Math.max(0, content - bank.floor() * capacity));
                content -= from;
                missing += -left - from;
            }
        }
        return new double[] {made, missing, dumped, content / capacity};
    }

    @Test
    void a_year_of_a_demo_plant_agrees_with_another_loop() {
        Plant plant = demo("rowan-ghyll");
        PowerTable table = PowerTable.of(plant);
        FlowSeries series =
                PublishedSeasonTest.stream("streams/choptank-2000.csv").times(0.001);
        double[] watts = new double[24];
        Arrays.setAll(watts, h -> h > 16 ? 900 : 150);
        LoadDay loads = LoadDay.of(watts);
        YearBattery bank = YearBattery.of(plant.numbers().battery());
        for (int visit : new int[] {1, 7, 30}) {
            Year year = Year.of(series, table, loads, bank, new Year.Keeping(0.0005, visit));
            double[] other = byAnotherLoop(series, table, loads, bank, 0.0005, visit);
            assertThat(year.totalMade() / 3600).isCloseTo(other[0], within(1e-6 * other[0]));
            assertThat(year.totalMissing() / 3600).isCloseTo(other[1], within(1e-6 * other[0]));
            assertThat(year.totalDumped() / 3600).isCloseTo(other[2], within(1e-6 * other[0]));
            assertThat(year.charge()[year.charge().length - 1]).isCloseTo(other[3], within(1e-9));
            assertThat(year.totalMissing()).isPositive();
            assertThat(year.firstEmpty()).isNotNull();
        }
    }

    @Test
    void more_visits_never_lose_much_and_change_more_often() {
        PowerTable table = PowerTable.of(demo("rowan-ghyll"));
        FlowSeries series =
                PublishedSeasonTest.stream("streams/choptank-2000.csv").times(0.0008);
        YearBattery bank = new YearBattery(1e12, 0, 0, 1, 1e9);
        Year daily = Year.of(series, table, LoadDay.of(new double[24]), bank, new Year.Keeping(0, 1));
        Year seldom = Year.of(series, table, LoadDay.of(new double[24]), bank, new Year.Keeping(0, 60));
        assertThat(daily.totalMade()).isGreaterThan(seldom.totalMade());
        assertThat(daily.changes()).isGreaterThan(seldom.changes());
        assertThat(Arrays.stream(daily.daysOnSet()).sum()).isEqualTo(series.days());
    }

    @Property(tries = 60)
    void energy_is_neither_made_nor_lost(
            @ForAll @DoubleRange(min = 0, max = 2000) double power,
            @ForAll @DoubleRange(min = 0, max = 2000) double load,
            @ForAll @DoubleRange(min = 0.3, max = 1) double efficiency,
            @ForAll @DoubleRange(min = 0, max = 0.9) double floor,
            @ForAll @IntRange(min = 0, max = 1000) int seed) {
        Random random = new Random(seed);
        double[] watts = new double[24];
        Arrays.setAll(watts, h -> load * random.nextDouble());
        double energy = 5e6 * (1 + random.nextDouble() * 10);
        YearBattery bank = new YearBattery(
                energy, floor, Math.max(floor, random.nextDouble()), efficiency, 50 + 1000 * random.nextDouble());
        PowerTable table = PowerTable.ofPoints(SET, new double[] {0, 0.01}, new double[] {0, power});
        Year year = Year.of(
                FlowSeries.ofMonths(
                        List.of(0.01, 0.02, 0.005, 0.0, 0.001, 0.002, 0.01, 0.0, 0.003, 0.004, 0.009, 0.02)),
                table,
                LoadDay.of(watts),
                bank,
                new Year.Keeping(0.001, 3));
        double end = year.charge()[year.charge().length - 1] * energy;
        double in = 0;
        double out = 0;
        double before = bank.start();
        for (double after : year.charge()) {
            in += Math.max(0, after - before) * energy / efficiency;
            out += Math.max(0, before - after) * energy;
            before = after;
        }
        double scale = year.totalMade() + year.totalUsed() + energy;
        assertThat(year.totalMade() + out).isCloseTo(year.totalUsed() + year.totalDumped() + in, within(1e-9 * scale));
        assertThat(bank.start() * energy + in * efficiency - out).isCloseTo(end, within(1e-9 * scale));
        assertThat(year.leastCharge()).isGreaterThanOrEqualTo(floor - 1e-9);
        assertThat(year.capacityFactor()).isBetween(0.0, 1.0 + 1e-12);
        assertThat(year.months())
                .hasSize(12)
                .allSatisfy(m -> assertThat(m.missing()).isNotNegative());
    }

    @Test
    void what_lies_between_the_points_of_the_table_is_within_its_error_and_half_a_percent() {
        for (String name : List.of("rowan-ghyll", "orchard-sluice", "ash-gill")) {
            Plant plant = demo(name);
            PowerTable table = PowerTable.of(plant);
            assertThat(table.error()).isLessThan(0.005);
            Random random = new Random(7);
            for (int set = 0; set < table.sets().size(); set++) {
                double full = table.fullFlow(set);
                double greatest = table.power(set, full, 0.5);
                for (int i = 0; i < 20; i++) {
                    double flow = full * (0.05 + 1.2 * random.nextDouble());
                    double solved = plant.solve()
                            .running(table.sets().get(set), flow)
                            .operatingPoint()
                            .batteryPower();
                    double charge = plant.numbers().battery().stateOfCharge();
                    assertThat(table.power(set, flow, charge))
                            .as("%s, %s at %s", name, table.sets().get(set).name(), flow)
                            .isCloseTo(Math.max(0, solved), within(0.005 * greatest));
                }
            }
        }
    }

    @Test
    void a_duration_curve_becomes_days_that_have_that_curve() {
        FlowSeries series = FlowSeries.ofDuration(List.of(0.1, 0.5, 0.95), List.of(0.02, 0.008, 0.002));
        FlowDuration curve = FlowDuration.of(series.flows());
        assertThat(curve.exceeded(0.1)).isCloseTo(0.02, within(2e-4));
        assertThat(curve.exceeded(0.5)).isCloseTo(0.008, within(1e-4));
        assertThat(curve.exceeded(0.95)).isCloseTo(0.002, within(1e-4));
        assertThat(series.flow(0)).isEqualTo(0.02);
        assertThat(series.flow(182)).isEqualTo(0.002);
    }

    @Test
    void a_repeating_history_has_whole_cycles_only() {
        double[] swings = {0.9, 0.4, 0.8, 0.5, 1.0, 0.7};
        List<Rainflow.Cycle> cycles = Rainflow.ofRepeating(swings);
        assertThat(cycles).allSatisfy(c -> assertThat(c.count()).isEqualTo(1));
        assertThat(cycles.stream().mapToDouble(Rainflow.Cycle::range).sorted().toArray())
                .containsExactly(new double[] {0.2, 0.3, 0.6}, within(1e-12));
    }

    @Test
    void shallow_cycles_cost_life_by_their_depth_and_deep_ones_by_the_table() {
        PowerTable none = PowerTable.ofPoints(SET, new double[] {0, 1}, new double[] {0, 0});
        double[] watts = new double[24];
        Year still = Year.of(
                FlowSeries.constant(1),
                none,
                LoadDay.of(watts),
                new YearBattery(1e6, 0, 1, 1, 1),
                new Year.Keeping(0, 1));
        assertThat(still.lifeUsed(Chemistry.LITHIUM_IRON_PHOSPHATE)).isEmpty();
        PowerTable some = PowerTable.ofPoints(SET, new double[] {0, 1}, new double[] {0, 100});
        watts[20] = 600;
        YearBattery bank = new YearBattery(1000 * 3600, 0, 1, 1, 1e9);
        Year daily = Year.of(FlowSeries.constant(1), some, LoadDay.of(watts), bank, new Year.Keeping(0, 1));
        assertThat(daily.leastCharge()).isCloseTo(0.5, within(1e-9));
        double cycles = CellChemistryCatalogue.cycles(Chemistry.LITHIUM_IRON_PHOSPHATE, 0.5)
                .orThrow();
        assertThat(daily.lifeUsed(Chemistry.LITHIUM_IRON_PHOSPHATE).orElseThrow())
                .isCloseTo(365 / cycles, within(1e-6));
        assertThat(daily.fullCycles()).isCloseTo(365 * 0.5, within(1e-6));
        assertThat(daily.longestOnBattery()).isEqualTo(1);
    }

    /** 8 cells of 3.2 V and 200 Ah, charged by 100 A at most, used to 80 % of it, 94 % of the energy back. */
    @Test
    void the_bank_of_a_demo_plant_is_what_its_file_says() {
        YearBattery bank = YearBattery.of(demo("rowan-ghyll").numbers().battery());
        assertThat(bank.energy()).isCloseTo(8 * 3.2 * 200 * 3600, within(1.0));
        assertThat(bank.mostCharging()).isCloseTo(100 * 8 * 3.2, within(1e-6));
        assertThat(bank.floor()).isCloseTo(0.2, within(1e-12));
        assertThat(bank.efficiency()).isCloseTo(0.94, within(1e-12));
        assertThat(bank.start()).isEqualTo(1);
    }

    @Test
    void loads_end_at_ten_in_the_evening_behind_the_inverter_and_its_standing_power_runs_all_day() {
        DailyUse use = new DailyUse(
                List.of(
                        new LoadNumbers("lamps", 2, 50, 2.5 * 3600, true, false),
                        new LoadNumbers("kettle", 1, 900, 3600, false, false),
                        new LoadNumbers("pump", 1, 10, 24 * 3600, true, false)),
                0.9,
                6);
        LoadDay day = LoadDay.of(use);
        // by hand: 6 W and 10 W all day; 100 W from half past seven; 900 W / 0.9 from nine
        assertThat(new double[] {day.watts(18), day.watts(19), day.watts(20), day.watts(21), day.watts(22)})
                .containsExactly(new double[] {16, 16 + 50, 16 + 100, 16 + 100 + 1000, 16}, within(1e-9));
        assertThat(day.energy()).isCloseTo(use.demand(), within(1e-6));
    }

    @Test
    void cycles_shallower_than_any_published_cost_life_in_proportion() {
        PowerTable some = PowerTable.ofPoints(SET, new double[] {0, 1}, new double[] {0, 100});
        double[] watts = new double[24];
        watts[20] = 200;
        YearBattery bank = new YearBattery(1000 * 3600, 0, 1, 1, 1e9);
        Year daily = Year.of(FlowSeries.constant(1), some, LoadDay.of(watts), bank, new Year.Keeping(0, 1));
        // by hand: 365 turns of a tenth; 8000 of a fifth are published, so 16 000 of a tenth are taken
        assertThat(daily.lifeUsed(Chemistry.LITHIUM_IRON_PHOSPHATE).orElseThrow())
                .isCloseTo(365.0 / 16_000, within(1e-9));
    }

    @Test
    void what_cannot_be_meant_is_refused() {
        assertThatThrownBy(() -> new YearBattery(0, 0, 1, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Year.Keeping(0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LoadDay.of(new double[23])).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FlowSeries.ofMonths(List.of(1.0))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> FlowDuration.of(new double[0])).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PowerTable.ofPoints(SET, new double[] {0, 0}, new double[] {0, 1}))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void days_of_the_design_are_the_same_year_as_days_handed_in() throws IOException {
        Path file = Path.of("..", "hydro-examples", "designs", "rowan-ghyll.yaml");
        List<Double> litres = new ArrayList<>();
        NavigableMap<LocalDate, Double> days = new TreeMap<>();
        for (int i = 0; i < 366; i++) {
            litres.add(i % 7 == 0 ? 1.8 : 2 + 10 * (i % 61) / 61.0);
            days.put(LocalDate.of(2024, 1, 1).plusDays(i), litres.get(i) / 1000);
        }
        String flows = litres.stream().map(l -> l + " L/s").collect(Collectors.joining(", "));
        String text = Files.readString(file)
                .replaceFirst(
                        "(?s)    flow:\\R      kind: duration-curve.*?intake:",
                        "    flow: { kind: daily, from: 2024-01-01, flows: [ " + flows + " ] }\nintake:");
        Reading reading = DesignReader.read(text, "daily.yaml");
        assertThat(reading.problems()).isEmpty();
        Plant plant = Plant.of(Objects.requireNonNull(reading.design()));
        DesignYear.Told own = (DesignYear.Told) DesignYear.of(plant, null, 7);
        DesignYear.Told handed = (DesignYear.Told) DesignYear.of(demo("rowan-ghyll"), FlowSeries.of(days, 0), 7);
        assertThat(own.stream()).isEqualTo(DesignYear.Source.SERIES);
        assertThat(own.year().made()).containsExactly(handed.year().made(), within(1e-6));
        assertThat(own.year().totalMissing()).isCloseTo(handed.year().totalMissing(), within(1.0));
        // elsewhere their duration curve is told
        List<StreamLevel> levels = plant.numbers().site().stream();
        FlowDuration curve = FlowDuration.of(own.year().series().flows());
        assertThat(levels).hasSize(12).allSatisfy(level -> {
            assertThat(level.kind()).isEqualTo(StreamLevel.Kind.EXCEEDED);
            assertThat(level.flow()).isCloseTo(curve.exceeded(level.at()), within(1e-12));
        });
    }
}
