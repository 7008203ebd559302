package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leat.cli.Said.leat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.check.Samples;

/** What a call says of settings, suppressions and baselines. */
class AcceptingTest {

    /** Two jets too wide for the pipe, cables in a list. */
    private static final String PLANT = Samples.SHORT.replace("open: [10 mm]", "open: [25 mm, 25 mm]") + """
            cables:
              - { from: rectifier, to: regulator, length: 60 m, conductor: { area: 2.5 mm² } }
              - { from: regulator, to: battery, length: 3 m, conductor: { area: 1.5 mm² } }
            """;

    @TempDir
    Path folder;

    private String write(String name, String text) throws IOException {
        Files.createDirectories(folder.resolve(name).getParent());
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private JsonNode results(String sarif) throws IOException {
        return new ObjectMapper().readTree(sarif).at("/runs/0/results");
    }

    private String baseline(String plant) throws IOException {
        return write("old.sarif", leat("check", "--format", "sarif", plant).out());
    }

    @Test
    void a_baseline_survives_edits_above_reordering_and_another_file_name() throws IOException {
        String log = baseline(write("plant.yaml", PLANT));
        String moved = "# a line more\n\n" + PLANT.replaceFirst("(  - \\{ from: rectifier.*\n)(.*\n)", "$2$1");
        assertThat(moved).isNotEqualTo("# a line more\n\n" + PLANT);
        String renamed = write("elsewhere/renamed.yaml", moved);
        assertThat(leat("check", "--fail-on", "note", renamed).code()).isEqualTo(1);
        Said ran = leat("check", "--fail-on", "note", "--baseline", log, "--format", "sarif", renamed);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        List<String> states = new ArrayList<>();
        results(ran.out()).forEach(r -> {
            if (List.of("fail", "open", "review").contains(r.at("/kind").asText())) {
                states.add(r.at("/baselineState").asText());
            }
        });
        assertThat(states).isNotEmpty().containsOnly("unchanged");
        assertThat(leat("check", "--whole", "--fail-on", "note", "--baseline", log, renamed)
                        .out())
                .contains("Known from the baseline");
    }

    @Test
    void what_gets_worse_or_comes_new_fails_and_what_goes_is_absent() throws IOException {
        String log = baseline(write("plant.yaml", PLANT));
        String worse = write("worse.yaml", PLANT.replace("length: 60 m", "length: 90 m"));
        Said ran = leat("check", "--fail-on", "note", "--baseline", log, "--format", "sarif", worse);
        assertThat(ran.code()).isEqualTo(1);
        List<String> fresh = new ArrayList<>();
        results(ran.out()).forEach(r -> {
            if (r.at("/baselineState").asText().equals("new")) {
                fresh.add(r.at("/ruleId").asText());
            }
        });
        assertThat(fresh).isNotEmpty();
        String better = write(
                "better.yaml", PLANT.replace("area: 2.5 mm²", "area: 95 mm²").replace("60 m", "2 m"));
        Said gone = leat("check", "--baseline", log, "--format", "sarif", better);
        assertThat(gone.out()).contains("\"baselineState\": \"absent\"");
        assertThat(leat("check", "--whole", "--baseline", log, better).out()).contains("In the baseline and no more");
    }

    @Test
    void a_log_written_against_a_baseline_is_a_baseline_again() throws IOException {
        String plant = write("plant.yaml", PLANT);
        String log = baseline(plant);
        String again = write(
                "again.sarif",
                leat("check", "--format", "sarif", "--baseline", log, plant).out());
        assertThat(leat("check", "--fail-on", "note", "--baseline", again, plant)
                        .code())
                .isZero();
    }

    @Test
    void a_log_that_cannot_be_used_exits_with_2_and_its_place() throws IOException {
        String plant = write("plant.yaml", PLANT);
        for (String text : List.of(
                "",
                "[]",
                "{",
                "{\"version\": \"2.0.0\", \"runs\": []}",
                "{\"version\": \"2.1.0\"}",
                "{\"version\": \"2.1.0\", \"runs\": [{\"tool\": {\"driver\": {\"name\": \"other\"}}}]}",
                "{\"version\": \"2.1.0\", \"runs\": [{\"results\": [{\"ruleId\": \"a/b\"}]}]}",
                "[".repeat(5000),
                "\u0000")) {
            Said ran = leat("check", "--baseline", write("log.sarif", text), plant);
            assertThat(ran.code()).as(text).isEqualTo(2);
            assertThat(ran.out()).isEmpty();
            assertThat(ran.err())
                    .matches("(?s)leat: .*log\\.sarif:\\d+:\\d+: .*")
                    .doesNotContain("\tat ", "Exception");
        }
        assertThat(leat("check", "--baseline", "none.sarif", plant).code()).isEqualTo(2);
    }

    @Test
    void a_wrong_settings_file_exits_with_2_and_every_problem_has_its_place() throws IOException {
        String plant = write("plant.yaml", PLANT);
        String settings = write(
                "s.yaml",
                "format: 1\nrules:\n  penstock/velocty: { level: note, reason: x }\n"
                        + "  penstock/velocity: { limits: { velocity: 4 bar }, reason: x }\n");
        for (String[] call : new String[][] {
            {"check", "--settings", settings, plant},
            {"rules", "--settings", settings},
            {"settings", "--settings", settings}
        }) {
            Said ran = leat(call);
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.out()).isEmpty();
            assertThat(ran.err())
                    .contains("s.yaml:3:3: ", "penstock/velocity", "s.yaml:4:44: ")
                    .doesNotContain("\tat ");
        }
        String packs = write("p.yaml", "format: 1\npacks: [none.jar]\n");
        assertThat(leat("check", "--settings", packs, plant).err()).contains("p.yaml:2:9: ", "none.jar");
        assertThat(leat("check", "--settings", "none.yaml", plant).code()).isEqualTo(2);
    }

    @Test
    void every_format_says_which_file_and_line_changed_a_limit() throws IOException {
        String plant = write("plant.yaml", PLANT);
        write(
                "firm.yaml",
                "format: 1\nrules:\n  penstock/velocity:\n    limits:\n      velocity: 1 m/s\n    reason: silt\n");
        String settings = write("project.yaml", "format: 1\nbuilds-on: [firm.yaml]\nfail-on: warning\n");
        assertThat(leat("check", "--whole", "--settings", settings, plant).out())
                .contains("limit velocity changed by", "firm.yaml:5: silt", "Changed by settings");
        JsonNode run = new ObjectMapper()
                .readTree(leat("check", "--settings", settings, "--format", "sarif", plant)
                        .out())
                .at("/runs/0/invocations/0/ruleConfigurationOverrides/0");
        assertThat(run.at("/descriptor/id").asText()).isEqualTo("penstock/velocity");
        assertThat(run.at("/configuration/parameters/velocity").asText()).isEqualTo("1 m/s");
        assertThat(run.at("/properties/changes/0").asText()).contains("firm.yaml:5");
        assertThat(leat("check", "--settings", settings, "--format", "json", plant)
                        .out())
                .contains("firm.yaml:5");
        Said shown = leat("settings", "--settings", settings);
        assertThat(shown.out())
                .contains(
                        "project.yaml,",
                        "fail-on  warning  ",
                        "project.yaml:3",
                        "penstock/velocity  limit velocity 1 m/s")
                .doesNotContain("the rule's own:");
        assertThat(leat("settings", "--all", "--settings", settings).out()).contains("the rule's own: common practice");
        assertThat(leat("settings").out()).contains("no settings file", "fail-on  error");
    }

    @Test
    void a_suppressed_finding_is_in_every_format_and_danger_stands_at_the_top() throws IOException {
        String found =
                leat("check", "--format", "json", write("plant.yaml", PLANT)).out();
        JsonNode worst = null;
        for (JsonNode finding : new ObjectMapper().readTree(found).at("/designs/0/findings")) {
            if (finding.path("endangers").asBoolean()) {
                worst = finding;
            }
        }
        assertThat(worst).isNotNull();
        String plant = write(
                "accepted.yaml",
                PLANT + "suppressions:\n  - rule: " + worst.at("/rule").asText()
                        + "\n    at: '"
                        + worst.at("/path")
                                .asText()
                                .replace("cables[0]", "cables[rectifier+regulator]")
                                .replace("cables[1]", "cables[regulator+battery]")
                        + "'\n    reason: dug out and measured\n    by: A. Example\n    danger: accepted\n    until: 2031-05-30\n");
        String text = leat("check", "--whole", "--today", "2031-05-30", plant).out();
        assertThat(text.indexOf("Does not count, and can hurt someone"))
                .isPositive()
                .isLessThan(text.indexOf("How it runs"));
        assertThat(text).contains("A. Example, who accepts the danger: dug out", "compared with 2031-05-30");
        String sarif = leat("check", "--today", "2031-05-30", "--format", "sarif", plant)
                .out();
        assertThat(sarif).contains("\"kind\": \"inSource\"", "\"status\": \"accepted\"", "dug out and measured");
        assertThat(leat("check", "--today", "2031-05-30", "--format", "json", plant)
                        .out())
                .contains("\"suppressed\": {", "\"comparedWithDay\": \"2031-05-30\"");
        Said after = leat("check", "--whole", "--today", "2031-05-31", plant);
        assertThat(after.out())
                .contains("Suppressions that suppress nothing", "ended on 2031-05-30, and it is 2031-05-31");
        assertThat(leat("check", "--today", "31.5.2031", plant).code()).isEqualTo(2);
    }
}
