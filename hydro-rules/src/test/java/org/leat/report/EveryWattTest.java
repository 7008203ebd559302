package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.check.Checker;
import org.leat.check.Report;
import org.leat.design.Design;
import org.leat.design.RegulatorKind;
import org.leat.file.DesignReader;
import org.leat.file.Names;
import org.leat.pack.BuiltInPack;
import org.leat.plant.Plant;
import org.leat.plant.cases.PressureProfile;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.Amount;
import org.leat.plant.solved.EnergyAccount;
import org.leat.plant.solved.EnergyAccount.Stage;
import org.leat.report.TextWriter.Colours;

/** Both tables tell all of where the power goes, whatever the regulator. */
class EveryWattTest {

    private static final Path DEMOS = Path.of("../hydro-examples/designs");
    private static final Path BASES = Path.of("src/main/resources/org/leat/pack/bases");
    private static final Map<RegulatorKind, Path> EACH_KIND = new TreeMap<>(Map.of(
            RegulatorKind.TRACKING, BASES.resolve("sound-tracking.yaml"),
            RegulatorKind.SHUNT, BASES.resolve("sound.yaml"),
            RegulatorKind.SERIES, DEMOS.resolve("tannery-yard.yaml"),
            RegulatorKind.NONE, DEMOS.resolve("first-try.yaml")));

    private final Checker checker = Checker.of(List.of(new BuiltInPack()));

    private static Stream<RegulatorKind> kinds() {
        return EACH_KIND.keySet().stream();
    }

    private static Design read(Path file) throws IOException {
        return Objects.requireNonNull(
                DesignReader.read(Files.readString(file), file.toString()).design());
    }

    private Report report(Path file) throws IOException {
        return checker.check(DesignReader.read(Files.readString(file), file.toString()));
    }

    private String text(Report report) throws IOException {
        StringBuilder out = new StringBuilder();
        TextWriter writer = new TextWriter(checker.rulebook(), out, Colours.NONE);
        writer.add(report);
        writer.end();
        return out.toString();
    }

    private JsonNode json(Report report) throws IOException {
        StringBuilder out = new StringBuilder();
        JsonWriter writer = new JsonWriter(checker.rulebook(), out);
        writer.add(report);
        writer.end();
        return new ObjectMapper().readTree(out.toString()).at("/designs/0");
    }

    @Test
    void there_is_a_design_with_each_kind_of_regulator() throws IOException {
        for (Map.Entry<RegulatorKind, Path> each : EACH_KIND.entrySet()) {
            assertThat(Plant.of(read(each.getValue())).numbers().regulator().kind())
                    .isEqualTo(each.getKey());
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void the_text_tells_every_stage_in_order_whatever_the_regulator(RegulatorKind kind) throws IOException {
        Report report = report(EACH_KIND.get(kind));
        String text = text(report);
        String table = text.substring(text.indexOf("Where every watt goes\n"), text.indexOf("\n  regulator: "));
        List<String> lines = table.lines().toList();
        String regulator = kind == RegulatorKind.NONE ? "cable's end" : "regulator input";
        List<String> names = List.of(
                "water, gross head",
                "nozzle, net head",
                "jet",
                "runner shaft",
                "air gap",
                "alternator terminals",
                "behind the bridge",
                regulator,
                "battery poles",
                "stored in the battery");
        assertThat(lines).hasSize(2 + names.size());
        for (int i = 0; i < names.size(); i++) {
            StringBuilder row = new StringBuilder("  " + names.get(i));
            for (Running running : report.running()) {
                double power = running.operatingPoint().energy().at(Stage.values()[i]);
                assertThat(power).isGreaterThan(9.95);
                row.append(" +").append(Math.round(power)).append(" W");
            }
            assertThat(lines.get(2 + i)).matches(row.toString());
        }
        assertThat(lines.get(1)).contains(report.running().get(0).nozzles().name());
        String told = text.substring(text.indexOf("\n  regulator: ") + 14)
                .lines()
                .findFirst()
                .orElse("");
        assertThat(told).startsWith(kind == RegulatorKind.SERIES ? "in series" : Names.ofConstant(kind));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void json_has_each_stage_with_its_power_and_loss(RegulatorKind kind) throws IOException {
        Report report = report(EACH_KIND.get(kind));
        JsonNode design = json(report);
        for (int set = 0; set < report.running().size(); set++) {
            JsonNode rows = design.at("/operating/" + set + "/energy");
            assertThat(rows).hasSameSizeAs(Stage.values());
            for (Stage stage : Stage.values()) {
                EnergyAccount energy =
                        report.running().get(set).operatingPoint().energy();
                JsonNode row = rows.get(stage.ordinal());
                assertThat(row.get("stage").asText()).isEqualTo(Names.ofConstant(stage));
                assertThat(row.get("power").asDouble()).isCloseTo(energy.at(stage), within(1e-5));
                assertThat(row.get("lost").asDouble()).isCloseTo(energy.lostBefore(stage), within(1e-5));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void both_outputs_tell_the_pressures_along_the_pipe(RegulatorKind kind) throws IOException {
        Report report = report(EACH_KIND.get(kind));
        PressureProfile profile = report.profile();
        String text = text(report);
        List<String> lines = text.substring(text.indexOf("Pressure along the pipe\n"))
                .lines()
                .limit(2 + profile.points().size())
                .toList();
        assertThat(lines.get(1)).matches("  point +distance +elevation +standing +running +highest +lowest +rating.*");
        JsonNode points = json(report).at("/pressures/points");
        assertThat(points).hasSameSizeAs(profile.points());
        for (int i = 0; i < profile.points().size(); i++) {
            PressureProfile.Point point = profile.points().get(i);
            assertThat(lines.get(2 + i))
                    .matches("  " + point.at() + " .*" + bar(point.standing()) + " +" + bar(point.running()) + " +"
                            + bar(point.highest()) + " +" + bar(point.lowest()) + " .*");
            JsonNode entry = points.get(i);
            assertThat(entry.get("at").asText()).isEqualTo(point.at());
            assertThat(entry.get("running").asDouble()).isCloseTo(point.running(), within(1e-3));
            assertThat(entry.get("highest").asDouble())
                    .isCloseTo(point.highest().or(-1), within(0.01)); // nine digits are written
            assertThat(entry.hasNonNull("lowest")).isEqualTo(point.lowest() instanceof Amount.Known);
        }
        String rejoins = profile.rejoined() ? ", as the water column, having parted, rejoins" : "";
        assertThat(text.replaceAll("\\s+", " "))
                .contains("highest in " + profile.highestDuring() + rejoins + ", lowest in " + profile.lowestDuring());
        assertThat(json(report).at("/pressures/highestDuring").asText()).isEqualTo(profile.highestDuring());
    }

    private static String bar(Amount amount) {
        return amount instanceof Amount.Known known ? bar(known.value()) : "unknown";
    }

    private static String bar(double pascal) {
        return String.format(java.util.Locale.ROOT, "%.2f", Math.rint(pascal / 1e3) / 100 + 0.0) + " bar";
    }
}
