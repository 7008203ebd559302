package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.check.PackJar;
import org.leat.check.Samples;
import org.leat.docs.OwnRulesPage;

/** The real jar, run as a builder runs it. */
class LeatIT {

    private static final Path JAR = Path.of("target", "leat.jar").toAbsolutePath();

    @TempDir
    Path folder;

    record Ran(int code, String out, String err) {}

    private Ran leat(String... arguments) throws Exception {
        return leat(List.of(), Map.of(), arguments);
    }

    private Ran leat(List<String> jvm, Map<String, String> environment, String... arguments) throws Exception {
        List<String> command = RealJar.command(jvm, arguments);
        Path out = Files.createTempFile(folder, "out", "");
        Path err = Files.createTempFile(folder, "err", "");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().remove("JAVA_TOOL_OPTIONS");
        builder.environment().putAll(environment);
        Process process = builder.start();
        process.getOutputStream().close();
        int code = process.waitFor();
        return new Ran(
                code, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
    }

    private void file(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    @Test
    void version_and_help_are_told() throws Exception {
        assertThat(leat("--version").out()).matches("leat \\d+\\.\\d+\\.\\d+\\S*\\R");
        Ran help = leat("--help");
        assertThat(help.code()).isZero();
        assertThat(help.out()).contains("check", "explain", "schema", "Exit codes");
        assertThat(leat("check", "--help").out()).contains("--format", "--fail-on", "--judge-all");
    }

    @Test
    void version_and_help_load_no_unit_and_no_json() throws Exception {
        for (String option : List.of("--version", "--help")) {
            String loaded = leat(List.of("-verbose:class"), Map.of(), option).out();
            assertThat(loaded)
                    .doesNotContain("tech.units.indriya")
                    .doesNotContain("com.fasterxml")
                    .doesNotContain("org.snakeyaml");
        }
    }

    @Test
    void nothing_of_expressions_is_loaded_unless_a_rule_file_is_named() throws Exception {
        file("sample.yaml", Samples.SHORT);
        file("rules.yaml", RULES);
        List<String> telling = List.of("-verbose:class");
        assertThat(leat(telling, Map.of(), "check", "--whole", "sample.yaml").out())
                .doesNotContain("dev.cel")
                .doesNotContain("com.google.common.", "com.google.protobuf.")
                .doesNotContain("org.leat.expression");
        assertThat(leat(telling, Map.of(), "check", "--whole", "--pack", "rules.yaml", "sample.yaml")
                        .out())
                .contains("dev.cel", "org.leat.expression");
    }

    private static final String RULES = """
            format: 1
            name: yard
            rules:
              - id: yard/pressure
                level: error
                title: standing pressure
                why: Our rule.
                source: works manual
                judged: all nozzles shut
                for-each: penstock.sections
                value: each.staticPressure
                at-most: 1.5.bar()
                fails: "{value}; {limit} is ours."
            """;

    @Test
    void rules_of_a_file_are_judged_explained_and_listed() throws Exception {
        file("sample.yaml", Samples.SHORT);
        file("rules.yaml", RULES);
        Ran ran = leat("check", "--whole", "--pack", "rules.yaml", "sample.yaml");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).contains("ERROR yard/pressure  at sample.yaml:7:", "2.35 bar; at most 1.5 bar is ours.");
        assertThat(leat("explain", "yard/pressure", "--pack", "rules.yaml").out())
                .contains("# yard/pressure", "works manual", "each.staticPressure");
        assertThat(leat("rules", "--pack", "rules.yaml").out()).contains("yard/pressure");
        file("wrong.yaml", RULES.replace("each.staticPressure", "each.length"));
        Ran wrong = leat("check", "--pack", "wrong.yaml", "sample.yaml");
        assertThat(wrong.code()).isEqualTo(2);
        assertThat(wrong.err())
                .contains("wrong.yaml:12:14: /rules[0]/at-most: found pressure; expected length, as the value is");
        assertThat(leat("check", "--pack", "none.yaml", "sample.yaml").code()).isEqualTo(2);
        assertThat(leat("check", "--pack", "rules.yaml", "--pack", "rules.yaml", "sample.yaml")
                        .err())
                .contains("two rules are called yard/pressure");
    }

    @Test
    void rules_of_a_jar_are_judged_and_one_that_breaks_leaves_the_rest() throws Exception {
        file("sample.yaml", Samples.SHORT);
        Path jar = PackJar.jar(folder, "example.HillPack", OwnRulesPage.source());
        Ran ran = leat("check", "--pack", jar.toString(), "--format", "json", "sample.yaml");
        assertThat(ran.out()).contains("hill/standing-pressure", "Our crew may join pipe at");
        String loops = OwnRulesPage.source()
                .replace("var sections = j", "if (j != null) throw new LinkageError(\"gone\"); var sections = j");
        assertThat(loops).isNotEqualTo(OwnRulesPage.source());
        Path broken = PackJar.jar(folder, "example.HillPack", loops);
        Ran open = leat("check", "--whole", "--pack", broken.toString(), "sample.yaml");
        assertThat(open.code()).isEqualTo(4);
        assertThat(open.out()).contains("hill/standing-pressure", "LinkageError: gone", "penstock/static-pressure");
        assertThat(leat("check", "--pack", "hill", "sample.yaml").err()).contains("no pack on the class path");
    }

    @Test
    void a_wrong_call_exits_with_2_and_a_word_on_the_error_stream() throws Exception {
        for (String[] call : new String[][] {
            {},
            {"check"},
            {"chekc", "x.yaml"},
            {"check", "--format", "xml", "x.yaml"},
            {"check", "--fail-on", "fatal", "x.yaml"},
            {"check", "--problems-only", "x.yaml"},
            {"explain"},
            {"explain", "no/such-rule"}
        }) {
            Ran ran = leat(call);
            assertThat(ran.code()).as(String.join(" ", call)).isEqualTo(2);
            assertThat(ran.out()).isEmpty();
            assertThat(ran.err()).startsWith("leat: ").doesNotContain("\tat ");
        }
    }

    @Test
    void the_schema_printed_is_the_one_in_the_docs() throws Exception {
        assertThat(leat("schema").out().strip())
                .isEqualTo(Files.readString(Path.of("../../docs/design-file.schema.json"))
                        .strip());
    }

    @Test
    void a_mistyped_rule_names_the_nearest() throws Exception {
        assertThat(leat("explain", "penstock/velocty").err()).contains("penstock/velocity");
    }

    @Test
    void explain_prints_the_page_of_the_reference() throws Exception {
        assertThat(leat("explain", "penstock/velocity").out())
                .isEqualToNormalizingWhitespace(Files.readString(Path.of("../../docs/rules/penstock/velocity.md")));
    }

    @Test
    void explain_takes_words_of_a_report_and_fields_of_a_design() throws Exception {
        assertThat(leat("explain", "air", "gap").out()).startsWith("air gap: power that crosses");
        assertThat(leat("explain", "Speed ratio").out()).contains("speed of the buckets over speed of the jet");
        assertThat(leat("explain", "alternator.speed-limit").out()).contains("name plate");
        Ran unknown = leat("explain", "ar gap");
        assertThat(unknown.code()).isEqualTo(2);
        assertThat(unknown.err()).contains("nearest is air gap");
    }

    @Test
    void check_begins_with_one_screen_and_whole_gives_the_rest() throws Exception {
        file("plant.yaml", Samples.SHORT);
        Ran screen = leat("check", "plant.yaml");
        assertThat(screen.out().lines()).hasSizeLessThanOrEqualTo(40).allMatch(line -> line.length() <= 100);
        assertThat(screen.out()).contains("Safe to open?", "can maim and kill").doesNotContain("How it runs");
        Ran whole = leat("check", "--whole", "plant.yaml");
        assertThat(whole.out()).contains("Safe to open?", "How it runs", "Could not be judged");
        assertThat(whole.out().lines()).allMatch(line -> line.length() <= 100);
        assertThat(whole.code()).isEqualTo(screen.code());
        assertThat(leat("check", "--format", "json", "plant.yaml").out()).doesNotContain("\"overview\"");
        JsonNode overview = new ObjectMapper()
                .readTree(leat("check", "--format", "json", "--whole", "plant.yaml")
                        .out())
                .at("/designs/0/overview");
        assertThat(overview.at("/verdict/answer").asText()).isIn("unsafe", "unjudged");
        assertThat(overview.at("/plan/budget").asInt()).isPositive();
        assertThat(overview.at("/inputs/0/how").asText()).isNotEmpty();
    }

    @Test
    void explain_prints_formula_case_source_and_limits() throws Exception {
        Ran ran = leat("explain", "penstock/velocity");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("v = Q", "common practice", "| velocity | 3 m/s |");
    }

    @Test
    void a_file_that_is_no_design_exits_with_3_and_every_problem_has_its_place() throws Exception {
        file("bad.yaml", "format: 1\nname: x\nsiet: 3\nsite:\n  gross-head: 3 bar\n");
        Ran ran = leat("check", "bad.yaml");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).contains("bad.yaml:3:1: ", "bad.yaml:5:15: ", "site");
        assertThat(leat("check", "missing.yaml").code()).isEqualTo(3);
        assertThat(leat("check", ".").code()).isEqualTo(3);
        file("empty.yaml", "");
        assertThat(leat("check", "empty.yaml").code()).isEqualTo(3);
        Files.write(folder.resolve("bytes.yaml"), new byte[] {(byte) 0xC3, 0x28, 0, 1});
        assertThat(leat("check", "bytes.yaml").code()).isEqualTo(3);
    }

    private static final Path ELECTRIC = Path.of("../src/main/resources/org/leat/pack/bases");

    /** A sound design with one value replaced; {@return where it stands} */
    private String spoilt(String name, String sound, String field, String value) throws IOException {
        String text = Files.readString(ELECTRIC.resolve(sound));
        int at = text.indexOf(field + ": ") + field.length() + 2;
        assertThat(text).containsOnlyOnce(" " + field + ": ");
        String end = text.substring(at);
        int length = end.length() - end.replaceFirst("^[^,}\\n]+", "").length();
        file(name, text.substring(0, at) + value + end.substring(length));
        int line = (int) text.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
        return name + ":" + line + ":" + (at - text.lastIndexOf('\n', at));
    }

    @Test
    void electric_numbers_that_cannot_be_are_refused_where_they_stand() throws Exception {
        String winding = spoilt("winding.yaml", "sound.yaml", "resistance-between-leads", "0 \u03A9");
        String battery = spoilt("battery.yaml", "sound.yaml", "internal-resistance", "0 m\u03A9");
        String dump = spoilt("dump.yaml", "sound.yaml", "resistance-hot", "0 \u03A9");
        String heat = spoilt("heat.yaml", "sound.yaml", "thermal-resistance", "0 K/W");
        String text = Files.readString(ELECTRIC.resolve("sound.yaml"));
        file("magnets.yaml", text.replace("  magnet-grade: sh\n", "  flux-coefficient: 0.11 %/K\n"));
        Ran ran = leat("check", "--whole", "winding.yaml", "battery.yaml", "dump.yaml", "heat.yaml", "magnets.yaml");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains(
                        winding + ": /alternator/winding/resistance-between-leads: found 0 \u03A9, which cannot be;"
                                + " expected more than 0 \u03A9",
                        battery + ": /battery/internal-resistance: found 0 m\u03A9, which cannot be;"
                                + " expected more than 0 m\u03A9",
                        dump + ": /dump-load/resistance-hot: found 0 \u03A9, which cannot be;"
                                + " expected more than 0 \u03A9",
                        heat + ": /alternator/thermal-resistance: found 0 K/W, which cannot be;"
                                + " expected more than 0 K/W")
                .containsPattern("magnets.yaml:\\d+:21: /alternator/flux-coefficient: found 0.11 %/K, which cannot be;"
                        + " expected at most 0 %/K");
    }

    @Test
    void electric_numbers_that_can_be_but_must_not_are_errors_where_they_stand() throws Exception {
        String point = spoilt("point.yaml", "sound.yaml", "absorption-voltage", "31 V");
        String drift = spoilt("drift.yaml", "sound-lead.yaml", "temperature-compensation", "4 mV/K");
        String text = Files.readString(ELECTRIC.resolve("sound.yaml"));
        file("fuse.yaml", text.replace("rated-current: 50 A", "rated-current: 250 A"));
        Ran points = leat("check", "--whole", "point.yaml");
        assertThat(points.code()).isEqualTo(1);
        assertThat(points.out()).contains("ERROR regulator/set-points  at " + point, "The set point is 31 V");
        Ran drifts = leat("check", "--whole", "drift.yaml");
        assertThat(drifts.code()).isEqualTo(1);
        assertThat(drifts.out())
                .contains("ERROR regulator/temperature-compensation  at " + drift, "(4 mV/K a cell): it must fall");
        Ran fuse = leat("check", "--whole", "fuse.yaml");
        assertThat(fuse.code()).isEqualTo(1);
        assertThat(fuse.out())
                .containsPattern(
                        "ERROR cable/protection  at fuse.yaml:\\d+:\\d+  protection\\[battery fuse\\].rated-current")
                .contains("The battery fuse of 250 A lets the run rectifier to battery burn before it opens");
    }

    @Test
    void one_bad_file_does_not_stop_the_rest() throws Exception {
        file("bad.yaml", "format: 1\n");
        file("plant.yaml", Samples.SHORT);
        Ran ran = leat("check", "bad.yaml", "plant.yaml");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).contains("plant.yaml: sample", "2 files checked, 1 not readable");
    }

    @Test
    void the_short_file_gets_an_operating_point_and_verdicts() throws Exception {
        file("plant.yaml", Samples.SHORT);
        Ran ran = leat("check", "--whole", "--fail-on", "note", "plant.yaml");
        assertThat(ran.code()).isIn(0, 1);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("How it runs", "nozzle set", "10 mm", "Assumed, because the file does not say");
        assertThat(ran.out().strip().lines().reduce("", (a, b) -> b)).startsWith("1 file checked, ");
    }

    @Test
    void what_could_not_be_judged_exits_with_4_where_all_was_to_be_judged() throws Exception {
        file("plant.yaml", Samples.SHORT);
        assertThat(leat("check", "--judge-all", "plant.yaml").code()).isEqualTo(4);
    }

    @Test
    void the_level_asked_for_sets_the_exit_code() throws Exception {
        file("plant.yaml", Samples.SHORT.replace("open: [10 mm]", "open: [25 mm, 25 mm]"));
        JsonNode summary = new ObjectMapper()
                .readTree(leat("check", "--format", "json", "plant.yaml").out())
                .get("summary");
        int errors = summary.get("errors").asInt();
        int warnings = summary.get("warnings").asInt();
        assertThat(warnings + errors).isPositive();
        assertThat(leat("check", "plant.yaml").code()).isEqualTo(errors > 0 ? 1 : 0);
        assertThat(leat("check", "--fail-on", "warning", "plant.yaml").code()).isEqualTo(1);
    }

    @Test
    void every_format_gives_the_same_bytes_in_every_locale_zone_and_encoding() throws Exception {
        file("plant.yaml", Samples.SHORT);
        for (String format : List.of("text", "json", "sarif")) {
            String[] call = {"check", "--format", format, "plant.yaml"};
            Ran here = leat(call);
            assertThat(here.out()).isNotEmpty();
            for (List<String> jvm : List.of(
                    List.of("-Duser.language=de", "-Duser.country=DE", "-Duser.timezone=Asia/Tokyo"),
                    List.of("-Duser.language=tr", "-Duser.country=TR", "-Duser.timezone=America/Lima"),
                    List.of("-Duser.language=ar", "-Duser.country=EG", "-Dfile.encoding=ISO-8859-1"))) {
                assertThat(leat(jvm, Map.of("LC_ALL", "C"), call))
                        .as(format + jvm)
                        .isEqualTo(here);
            }
        }
    }

    @Test
    void no_colour_where_nobody_looks_and_colour_on_demand() throws Exception {
        file("bad.yaml", "format: 1\n");
        assertThat(leat("check", "bad.yaml").out()).doesNotContain("\u001b");
        assertThat(leat("check", "--colour", "always", "bad.yaml").out()).contains("\u001b[");
    }

    @Test
    void control_characters_never_reach_the_terminal() throws Exception {
        file("bad.yaml", "format: 1\n\"a\\e[31mb\": 2\nname: \"x\\u202ey\"\n");
        Ran ran = leat("check", "bad.yaml", "no\u001b[2Jsuch.yaml");
        assertThat(ran.out().replace("\n", "")).doesNotContainPattern("[\\p{Cntrl}\\u202e]");
        assertThat(leat("explain", "a\u001b[31m/b").err().replaceAll("\\R", "")).doesNotContainPattern("\\p{Cntrl}");
    }

    @Test
    void output_that_cannot_be_written_is_not_a_success() throws Exception {
        Path full = Path.of("/dev/full"); // a device of Linux on which every write fails
        Assumptions.assumeTrue(Files.exists(full));
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-jar",
                        JAR.toString(),
                        "rules")
                .redirectOutput(full.toFile())
                .start();
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isEqualTo(4);
        assertThat(err).contains("could not be written").doesNotContain("\tat ");
    }

    @Test
    void sarif_names_files_relative_to_the_folder_one_works_in() throws Exception {
        Files.createDirectory(folder.resolve("my plants"));
        file("my plants/one.yaml", Samples.SHORT);
        for (String name : List.of(
                "my plants/one.yaml", folder.resolve("my plants/one.yaml").toString())) {
            JsonNode run = new ObjectMapper()
                    .readTree(leat("check", "--format", "sarif", name).out())
                    .at("/runs/0");
            assertThat(run.at("/artifacts/0/location/uri").asText()).isEqualTo("my%20plants/one.yaml");
        }
    }
}
