package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Checker;
import org.leat.check.Comparison;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.check.WayOut;
import org.leat.file.DesignReader;
import org.leat.pack.BuiltInPack;
import org.leat.plant.cases.BusSituation;
import org.leat.plant.cases.LoadLost;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;
import org.leat.report.TextWriter.Colours;

/** Lines over which a reader once stumbled, one by one. */
class SillyLinesTest {

    private static final Checker CHECKER = Checker.of(List.of(new BuiltInPack()));
    private static final Wording WORDING = new Wording(CHECKER.rulebook());
    private static final Path BASES = Path.of("src/main/resources/org/leat/pack/bases");

    private static String base(String name) throws IOException {
        return Files.readString(BASES.resolve(name + ".yaml"));
    }

    private static Report check(String text) {
        Report report = CHECKER.check(DesignReader.read(text, "f.yaml"));
        assertThat(report.problems()).isEmpty();
        return report;
    }

    private static List<String> said(Report report, String rule) {
        return report.findings().stream()
                .filter(f -> f.outcome().rule().equals(rule))
                .map(WORDING::of)
                .toList();
    }

    private static ComparisonText text(Comparison comparison) {
        return ComparisonText.of(comparison, CHECKER.rulebook().rule("penstock/friction-share"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "273.14999999999998 | TEMPERATURE | 0 °C",
                "273.27 | TEMPERATURE | 0.1 °C",
                "-1e-15 | LENGTH | 0 mm",
                "12345.6 | POWER | 12.3 kW",
                "25003659 | RATIO | 25000000",
                "1.7e308 | RATIO | without limit",
                "0.0004 | PRESSURE | 0 bar",
            })
    void a_number_is_shown_as_people_write_it(double si, QuantityKind kind, String shown) {
        assertThat(UsualUnits.show(si, kind)).isEqualTo(shown);
    }

    @Test
    void a_unit_that_does_not_suit_the_number_is_not_forced_on_it() {
        assertThat(UsualUnits.show(140, QuantityKind.LENGTH, "mm", 3)).isEqualTo("140 m");
        assertThat(UsualUnits.show(0.063, QuantityKind.LENGTH, "mm", 3)).isEqualTo("63 mm");
        assertThat(UsualUnits.show(13.3, QuantityKind.RATIO, "%", 3)).isEqualTo("13.3 times");
    }

    @Test
    void far_beyond_is_told_in_times_and_a_limit_of_nil_has_no_share() {
        assertThat(text(Comparison.atMost(3.8, 0.05, QuantityKind.RATIO)).margin())
                .isEqualTo("76 times the limit");
        assertThat(text(Comparison.atMost(1.71, 0.05, QuantityKind.RATIO)).margin())
                .isEqualTo("34 times the limit");
        assertThat(text(Comparison.atMost(0, 0, QuantityKind.LENGTH)).margin()).isEqualTo("nothing to spare");
        assertThat(text(Comparison.atMost(-0.4, 0, QuantityKind.LENGTH)).margin())
                .isEqualTo("400 mm to spare");
        assertThat(text(Comparison.atLeast(268.15, 273.15, QuantityKind.TEMPERATURE))
                        .margin())
                .isEqualTo("5 K beyond");
        assertThat(text(Comparison.atMost(28.40001, 28.4, QuantityKind.VOLTAGE)).margin())
                .isEqualTo("less than 0.1 % beyond");
    }

    @Test
    void a_wheel_at_the_wrong_speed_breaks_nothing_and_is_a_warning() {
        var card = CHECKER.rulebook().rule("runner/speed-ratio").card();
        assertThat(card.worst()).isEqualTo(Level.WARNING);
        assertThat(card.endangers()).isFalse();
    }

    @Test
    void nothing_is_asked_of_a_regulator_that_is_said_to_be_none() throws IOException {
        Report report = check(base("bare") + "regulator: { kind: none }\n");
        assertThat(report.worstFirst(Kind.OPEN))
                .noneMatch(f -> String.valueOf(f.outcome().missing()).startsWith("/regulator"));
        Report untold = check(base("bare"));
        assertThat(untold.worstFirst(Kind.OPEN))
                .anyMatch(f -> String.valueOf(f.outcome().missing()).startsWith("/regulator"));
    }

    @Test
    void one_reading_of_the_stream_is_no_driest_time() throws IOException {
        assertThat(said(check(base("brook")), "site/kept-flow"))
                .singleElement()
                .asString()
                .contains("At the one flow that is told")
                .doesNotContain("driest");
        assertThat(said(check(base("sound")), "site/kept-flow"))
                .singleElement()
                .asString()
                .contains("driest time");
    }

    @Test
    void a_narrower_pipe_is_no_way_out_where_it_costs_power_that_anybody_would_miss() throws IOException {
        String wide = base("bare").replace("outside-diameter: 63 mm", "outside-diameter: 125 mm");
        Report report = check(wide);
        assertThat(said(report, "penstock/friction-share"))
                .singleElement()
                .asString()
                .contains("more pipe than it takes");
        double now = report.running().get(0).operatingPoint().batteryPower();
        assertThat(report.findings().stream()
                        .filter(f -> f.outcome().rule().equals("penstock/friction-share"))
                        .flatMap(f -> f.waysOut().stream())
                        .filter(way -> way.edits().get(0).path().contains("/pipe")))
                .allMatch((WayOut way) -> way.gain().orElse(0) >= -0.02 * now);
    }

    @Test
    void a_jet_too_weak_to_turn_the_wheel_is_told_as_such_and_not_as_no_speed() throws IOException {
        Report report = check(base("sound").replace("open: [ 11 mm ]", "open: [ 1 mm ]"));
        StringBuilder out = new StringBuilder();
        new TextWriter(CHECKER.rulebook(), out, Colours.NONE).add(report);
        assertThat(report.running().get(0).operatingPoint().speed()).isZero();
        assertThat(out.toString()).contains("does not start");
        assertThat(said(report, "alternator/cut-in"))
                .singleElement()
                .asString()
                .contains("too weak to start the wheel");
    }

    @Test
    void a_nozzle_below_cut_in_idles_at_a_speed_and_runs_away_faster() throws IOException {
        Report report = check(base("sound").replace("open: [ 11 mm ]", "open: [ 2 mm ]"));
        double idle = report.running().get(0).operatingPoint().speed();
        assertThat(report.running().get(0).operatingPoint().batteryPower()).isZero();
        assertThat(idle).isGreaterThan(50);
        assertThat(report.bus().list())
                .filteredOn(s -> s instanceof LoadLost)
                .isNotEmpty()
                .allMatch(s -> s.runnerSpeed() >= idle);
        StringBuilder out = new StringBuilder();
        new TextWriter(CHECKER.rulebook(), out, Colours.NONE).add(report);
        assertThat(out.toString()).contains("below cut-in").doesNotContain(" 0 rpm");
    }

    @Test
    void a_voltage_of_a_moment_is_told_only_where_it_is_above_the_one_that_lasts() throws IOException {
        int below = 0;
        for (String name : List.of("bare", "sound", "sound-lead", "vague")) {
            Report report = check(base(name));
            StringBuilder out = new StringBuilder();
            new TextWriter(CHECKER.rulebook(), out, Colours.NONE, 100, true).add(report);
            List<String> rows = out.toString()
                    .lines()
                    .dropWhile(line -> !line.startsWith("What each case makes of the bus"))
                    .takeWhile(line -> !line.isEmpty())
                    .toList();
            assertThat(rows).hasSizeGreaterThan(5).noneMatch(row -> row.contains(" 0 mV"));
            for (BusSituation situation : report.bus().list()) {
                if (situation.momentVoltage() instanceof Amount.Known moment
                        && moment.value() < 0.99 * situation.lastingVoltage()) {
                    below++;
                    String lower = " " + UsualUnits.show(moment.value(), QuantityKind.VOLTAGE) + " ";
                    assertThat(rows).as(name).noneMatch(row -> row.contains(lower));
                }
            }
        }
        assertThat(below).isPositive();
    }
}
