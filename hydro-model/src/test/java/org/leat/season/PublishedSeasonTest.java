package org.leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.published.PublishedCase;

class PublishedSeasonTest {

    private static final NozzleGroup SET = new NozzleGroup("all", List.of(0.01), true);
    private static final double WATT_HOUR = 3600;

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("season");
    }

    static FlowSeries stream(String file) {
        SeriesReading read = SeriesReader.read(text(file));
        assertThat(read.faults()).isEmpty();
        assertThat(read.series()).isNotNull();
        return Objects.requireNonNull(read.series());
    }

    static String text(String file) {
        try (InputStream in = PublishedSeasonTest.class.getResourceAsStream("/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void a_year_agrees_with_what_is_published(PublishedCase c) {
        switch (c.family()) {
            case "rf-astm", "rf-lib" -> rainflow(c);
            case "rf-rep" -> repeating(c);
            case "fd-wb" -> quantiles(c);
            case "fd-tx" ->
                c.assertMatches("mean", FlowDuration.of(c.list("flow")).mean());
            case "fd-raw" -> service(c);
            case "fd-ch" -> choptank(c);
            case "ba-soc" -> balance(c);
            default -> throw new AssertionError("no law bound to " + c);
        }
    }

    private static void rainflow(PublishedCase c) {
        double[] series = c.has("series")
                ? c.list("series")
                : IntStream.range(0, (int) c.in("n"))
                        .mapToDouble(i -> 0.8 * Math.sin(0.01 * Math.PI * i) + 0.2 * Math.sin(0.032 * Math.PI * i))
                        .toArray();
        List<Rainflow.Cycle> cycles = Rainflow.ofOnce(series);
        JsonNode expected = c.json().get("expected");
        if (expected.has("cycles")) {
            JsonNode rows = expected.get("cycles").get("value");
            assertThat(cycles).hasSize(rows.size());
            for (int i = 0; i < rows.size(); i++) {
                JsonNode row = rows.get(i);
                assertThat(cycles.get(i))
                        .isEqualTo(new Rainflow.Cycle(
                                row.get(0).asDouble(),
                                row.get(1).asDouble(),
                                row.get(2).asDouble()));
            }
            return;
        }
        TreeMap<Double, Double> counts = new TreeMap<>();
        for (Rainflow.Cycle cycle : cycles) {
            counts.merge(Math.round(cycle.range() * 1e9) / 1e9, cycle.count(), Double::sum);
        }
        JsonNode rows = expected.get("counts").get("value");
        assertThat(counts).hasSize(rows.size());
        int i = 0;
        for (var count : counts.entrySet()) {
            assertThat(count.getKey()).isCloseTo(rows.get(i).get(0).asDouble(), within(1e-9));
            assertThat(count.getValue()).isEqualTo(rows.get(i).get(1).asDouble());
            i++;
        }
    }

    /** The positions of the source count from the smallest: what is not exceeded in a share is exceeded in the rest. */
    private static void repeating(PublishedCase c) {
        List<Rainflow.Cycle> cycles = Rainflow.ofRepeating(c.list("series"));
        assertThat(cycles).allSatisfy(cycle -> assertThat(cycle.count()).isEqualTo(1));
        double[] expected = StreamSupport.stream(
                        c.json().get("expected").get("ranges").get("value").spliterator(), false)
                .mapToDouble(JsonNode::asDouble)
                .sorted()
                .toArray();
        assertThat(cycles.stream().mapToDouble(Rainflow.Cycle::range).sorted().toArray())
                .isEqualTo(expected);
    }

    private static void quantiles(PublishedCase c) {
        if (c.has("p")) {
            c.assertMatches("x", FlowDuration.of(c.list("sample")).exceeded(c.in("p")));
            return;
        }
        FlowDuration curve = FlowDuration.of(c.list("Q"));
        for (int percent : new int[] {5, 25, 50, 75, 95}) {
            double ours = curve.exceeded(1 - percent / 100.0);
            String name = String.format(Locale.ROOT, "Q_p%02d", percent);
            c.tell(name, ours);
            assertThat(ours).isCloseTo(c.expected(name), within(1e-9));
        }
    }

    private static void service(PublishedCase c) {
        FlowSeries series = stream(c.text("file"));
        c.tell("days", series.days());
        assertThat(series.days()).isEqualTo((int) c.expected("days"));
        assertThat(series.date(0)).isEqualTo(LocalDate.of(2012, 9, 1));
        c.assertMatches("first_flow", series.flow(0));
        c.assertMatches("mean", FlowDuration.of(series.flows()).mean());
        c.assertMatches("max", FlowDuration.of(series.flows()).exceeded(0));
    }

    private static void choptank(PublishedCase c) {
        FlowSeries series = stream(c.text("file"));
        if (!c.has("Q_design")) {
            FlowDuration curve = FlowDuration.of(series.flows());
            c.tell("n", series.days());
            assertThat(series.days()).isEqualTo((int) c.expected("n"));
            c.assertMatches("mean", curve.mean());
            for (String percent : List.of("95", "90", "75", "50", "25", "10", "05")) {
                c.assertMatches("Q" + percent, curve.exceeded(Integer.parseInt(percent) / 100.0));
            }
            c.assertMatches("volume", Arrays.stream(series.flows()).sum() * 86_400);
            return;
        }
        double perFlow = c.in("rho") * c.in("g") * c.in("H") * c.in("eta");
        double design = c.in("Q_design");
        double least = c.in("least_share") * design;
        PowerTable table = least == 0
                ? PowerTable.ofPoints(SET, new double[] {0, design}, new double[] {0, perFlow * design})
                : PowerTable.ofPoints(SET, new double[] {0, Math.nextDown(least), least, design}, new double[] {
                    0, 0, perFlow * least, perFlow * design
                });
        Year year = Year.of(
                series,
                table,
                LoadDay.of(new double[24]),
                new YearBattery(1, 0, 1, 1, 1),
                new Year.Keeping(c.in("residual"), 1));
        c.assertMatches("E", year.totalMade() / WATT_HOUR / 1000);
        c.assertMatches("capacity_factor", year.capacityFactor());
    }

    private static void balance(PublishedCase c) {
        double capacity = c.in("capacity") * WATT_HOUR;
        PowerTable table = PowerTable.ofPoints(SET, new double[] {0, 1}, new double[] {0, c.in("source")});
        TreeMap<LocalDate, Double> day = new TreeMap<>();
        day.put(LocalDate.of(2001, 1, 1), 1.0);
        Year year = Year.of(
                FlowSeries.of(day, 0),
                table,
                LoadDay.of(c.list("load")),
                new YearBattery(capacity, c.in("soc_min"), c.in("soc0"), c.in("eta_charge"), 1e9),
                new Year.Keeping(0, 1));
        JsonNode soc = c.json().get("expected").get("soc").get("value");
        for (int hour = 0; hour < 24; hour++) {
            assertThat(year.charge()[hour])
                    .as("hour %d", hour)
                    .isCloseTo(soc.get(hour).asDouble(), within(1e-6));
        }
        c.assertMatches("unserved", year.totalMissing() / WATT_HOUR);
        c.assertMatches("spilled", year.totalDumped() / WATT_HOUR);
        c.tell("hours_short", year.hoursMissing());
        assertThat(year.hoursMissing()).isEqualTo((int) c.expected("hours_short"));
        double wanted = Arrays.stream(c.list("load")).sum();
        c.assertMatches("loss_of_load_energy", year.totalMissing() / WATT_HOUR / wanted);
    }
}
