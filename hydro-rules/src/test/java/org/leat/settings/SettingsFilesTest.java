package org.leat.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Checker;
import org.leat.check.Level;
import org.leat.check.RuleCard;
import org.leat.check.RuleInForce;
import org.leat.check.Settings;
import org.leat.check.Settings.PackUse;
import org.leat.file.ProblemText;
import org.leat.pack.BuiltInPack;

class SettingsFilesTest {

    private static final List<RuleCard> CARDS = Checker.of(List.of(new BuiltInPack())).rulebook().rules().stream()
            .map(RuleInForce::card)
            .toList();

    @TempDir
    Path folder;

    private Path write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private List<String> problems(String text) throws IOException {
        String home = folder + "/";
        return SettingsFiles.read(write("s.yaml", text)).settings(CARDS).problems().stream()
                .map(p -> ProblemText.line(p).replace(home, ""))
                .toList();
    }

    private static String velocity(String value) {
        return "rules:\n  penstock/velocity:\n    limits: { velocity: " + value + " }\n    reason: why\n";
    }

    @Test
    void the_nearest_file_wins_and_each_value_names_its_file_and_line() throws IOException {
        write(
                "national.yaml",
                "format: 1\nfail-on: note\n" + velocity("2 m/s") + "  plant/restart:\n    level: warning\n"
                        + "    reason: national\n");
        write(
                "firm/firm.yaml",
                "format: 1\nbuilds-on: [../national.yaml]\npacks: [own.jar, by-name]\n" + velocity("2.5 m/s"));
        Path project = write("project.yaml", "format: 1\nbuilds-on: [firm/firm.yaml]\n" + velocity("3.5 m/s"));
        SettingsFiles files = SettingsFiles.read(project);
        assertThat(files.problems()).isEmpty();
        assertThat(files.names())
                .extracting(n -> Path.of(n).getFileName().toString())
                .containsExactly("project.yaml", "firm.yaml", "national.yaml");
        Settings settings = files.settings(CARDS).settings();
        var velocity = settings.rules().get("penstock/velocity").limits().get("velocity");
        assertThat(velocity.value()).isEqualTo(3.5);
        assertThat(velocity.grounds().setBy()).endsWith("project.yaml:5");
        assertThat(settings.rules().get("plant/restart").level().grounds().setBy())
                .endsWith("national.yaml:8");
        assertThat(settings.failOn().level()).isEqualTo(Level.NOTE);
        assertThat(settings.failOn().setBy()).endsWith("national.yaml:2");
        assertThat(settings.packs())
                .extracting(PackUse::name)
                .containsExactly(folder.resolve("firm/own.jar").toString(), "by-name");
        assertThat(Checker.of(List.of(new BuiltInPack()), settings)
                        .rulebook()
                        .rule("penstock/velocity")
                        .limits()
                        .get("velocity")
                        .value())
                .isEqualTo(3.5);
    }

    @Test
    void of_a_list_the_later_wins_and_a_file_reached_twice_is_no_cycle() throws IOException {
        write("base.yaml", "format: 1\nfail-on: note\n");
        write("a.yaml", "format: 1\nbuilds-on: [base.yaml]\n" + velocity("2 m/s"));
        write("b.yaml", "format: 1\nbuilds-on: [base.yaml]\n" + velocity("4 m/s"));
        SettingsFiles.Taken taken = SettingsFiles.read(write("s.yaml", "format: 1\nbuilds-on: [a.yaml, b.yaml]\n"))
                .settings(CARDS);
        assertThat(taken.problems()).isEmpty();
        assertThat(taken.settings()
                        .rules()
                        .get("penstock/velocity")
                        .limits()
                        .get("velocity")
                        .value())
                .isEqualTo(4);
    }

    @Test
    void what_is_wrong_is_told_with_place_found_expected_and_nearest() throws IOException {
        assertThat(problems("format: 1\nrules:\n  penstock/velocty:\n    level: note\n    reason: why\n"))
                .singleElement()
                .asString()
                .startsWith("s.yaml:3:3: ")
                .contains("no rule is called \"penstock/velocty\"", "did you mean \"penstock/velocity\"?");
        assertThat(problems(
                        "format: 1\nrules:\n  penstock/velocity:\n    limits: { velocty: 4 m/s }\n    reason: why\n"))
                .singleElement()
                .asString()
                .startsWith("s.yaml:4:15: ")
                .contains("no limit called \"velocty\"", "did you mean \"velocity\"?");
        assertThat(problems("format: 1\n" + velocity("4 bar")))
                .singleElement()
                .asString()
                .startsWith("s.yaml:4:25: ")
                .contains("\"4 bar\", a pressure, where a speed belongs");
        assertThat(problems("format: 1\nbuilds-on: [none.yaml]\n"))
                .singleElement()
                .asString()
                .startsWith("s.yaml:2:13: ")
                .contains("cannot be read", "a file that exists");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "level: notice | did you mean",
                "level: error, limits: { velocity: 4 } | without a unit",
                "limits: { velocity: -4 m/s } | cannot be",
                "limits: { velocity: [4 m/s] } | expected a plain value",
                "colour: red, level: note | no field is called",
                "part: x, level: note | no field is called",
                "danger: accepted, level: note | person's name",
                "danger: yes, level: note, by: A. Example | found \"yes\"",
            })
    void a_wrong_change_is_refused(String change, String said) throws IOException {
        assertThat(problems("format: 1\nrules: { penstock/velocity: { reason: why, " + change + " } }\n"))
                .isNotEmpty()
                .anySatisfy(line -> assertThat(line).startsWith("s.yaml:2:").contains(said));
    }

    @Test
    void a_change_says_why_and_what() throws IOException {
        assertThat(problems("format: 1\nrules: { penstock/velocity: { level: note } }\n"))
                .singleElement()
                .asString()
                .contains("/reason: missing");
        assertThat(problems("format: 1\nrules: { penstock/velocity: { level: note, reason: ' ' } }\n"))
                .singleElement()
                .asString()
                .contains("expected a reason");
        assertThat(problems("format: 1\nrules: { penstock/velocity: { reason: why } }\n"))
                .singleElement()
                .asString()
                .contains("nothing is changed here");
    }

    @Test
    void errors_that_can_hurt_are_hidden_by_a_named_person_only() throws IOException {
        String rule = "format: 1\nrules: { penstock/static-pressure: { reason: why, ";
        for (String change : List.of("off: true", "level: warning", "level: note, by: A. Example")) {
            assertThat(problems(rule + change + " } }\n"))
                    .singleElement()
                    .asString()
                    .contains("can hurt someone");
        }
        assertThat(problems(rule + "off: true, by: A. Example, danger: accepted } }\n"))
                .isEmpty();
        assertThat(problems("format: 1\nrules: { runner/speed-ratio: { reason: why, off: true } }\n"))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "penstock/hose-rating | ratio: 2.5",
                "penstock/temperature | polyethylene: 60 °C",
                "protection/touch-voltage | reachable-wet: 48 V",
                "intake/vent | safety: 1.5",
            })
    void a_limit_that_protects_people_is_loosened_by_a_named_person_only(String rule, String limits)
            throws IOException {
        String head = "format: 1\nrules: { " + rule + ": { reason: why, limits: { " + limits + " }";
        assertThat(problems(head + " } }\n")).isNotEmpty().allMatch(line -> line.contains("can hurt someone"));
        assertThat(problems(head + ", by: A. Example } }\n")).allMatch(line -> line.contains("can hurt someone"));
        assertThat(problems(head + ", by: A. Example, danger: accepted } }\n")).isEmpty();
    }

    @Test
    void a_limit_that_protects_people_is_tightened_with_a_reason_alone() throws IOException {
        assertThat(problems("format: 1\nrules: { penstock/hose-rating: { reason: why, limits: { ratio: 4 } } }\n"))
                .isEmpty();
        assertThat(problems("format: 1\nrules: { penstock/velocity: { reason: why, limits: { velocity: 9 m/s } } }\n"))
                .as("a warning that hurts nobody")
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "penstock/hose-rating | ratio: 0.9 | at least 1",
                "intake/vent | safety: 0.5 | at least 1",
                "dump/absorbs-all | least: 80 % | at least 1",
                "alternator/torque-peak | most: 1.2 | at most 1",
            })
    void nobody_answers_for_a_safety_factor_below_one(String rule, String limits, String said) throws IOException {
        assertThat(problems("format: 1\nrules: { " + rule
                        + ": { reason: why, by: A. Example, danger: accepted, limits: { " + limits + " } } }\n"))
                .singleElement()
                .asString()
                .contains("cannot be", said);
    }

    @Test
    void the_beginning_of_a_rules_name_is_enough_to_name_it() throws IOException {
        assertThat(problems("format: 1\nrules: { penstock/friction: { reason: why, level: note } }\n"))
                .singleElement()
                .asString()
                .contains("did you mean \"penstock/friction-share\"?");
    }

    @Test
    void a_nearer_file_switches_on_again_what_a_farther_one_switched_off() throws IOException {
        write("far.yaml", "format: 1\nrules: { runner/speed-ratio: { reason: far, off: true } }\n");
        Settings settings = SettingsFiles.read(write(
                        "near.yaml",
                        "format: 1\nbuilds-on: [far.yaml]\n"
                                + "rules: { runner/speed-ratio: { reason: near, off: false } }\n"))
                .settings(CARDS)
                .settings();
        assertThat(Checker.of(List.of(new BuiltInPack()), settings)
                        .rulebook()
                        .rule("runner/speed-ratio")
                        .off())
                .isNull();
    }

    @Test
    void files_that_build_on_each_other_are_told_and_contained() throws IOException {
        write("a.yaml", "format: 1\nbuilds-on: [b.yaml]\n");
        write("b.yaml", "format: 1\nbuilds-on: [a.yaml]\n");
        assertThat(SettingsFiles.read(folder.resolve("a.yaml")).problems())
                .extracting(p -> p.kind().id())
                .containsExactly("settings-cycle");
        for (int i = 0; i < 30; i++) {
            write("deep" + i + ".yaml", "format: 1\nbuilds-on: [deep" + (i + 1) + ".yaml]\n");
            write("wide" + i + ".yaml", "format: 1\nbuilds-on: [wide" + (i + 1) + ".yaml, wide" + (i + 1) + ".yaml]\n");
        }
        for (String name : List.of("deep0.yaml", "wide0.yaml")) {
            assertThat(SettingsFiles.read(folder.resolve(name)).problems())
                    .isNotEmpty()
                    .allSatisfy(p -> assertThat(p.kind().id()).isEqualTo("too-many-values"));
        }
    }

    @Test
    void suppressions_name_their_design_and_a_known_rule() throws IOException {
        String text =
                "format: 1\nsuppressions:\n  - { design: x, rule: penstock/velocty, at: penstock, reason: why }\n";
        assertThat(problems(text))
                .singleElement()
                .asString()
                .startsWith("s.yaml:3:")
                .contains("penstock/velocity");
        assertThat(problems(text.replace("design: x, ", "")))
                .singleElement()
                .asString()
                .contains("/design: missing");
        assertThat(problems(text.replace("reason: why", "reason: ' '")))
                .singleElement()
                .asString()
                .contains("/reason");
    }

    @Test
    void hostile_files_end_in_problems() throws IOException {
        for (String text : List.of(
                "",
                "- x",
                "format: 2",
                "[".repeat(3000),
                "format: 1\nrules: []",
                "format: 1\nrules: {a: &x {}, b: *x}",
                "format: 1\n" + "#".repeat(1 << 21),
                "format: 1\nnotes: \"\\x00\"\u0000")) {
            assertThat(problems(text))
                    .as(text.substring(0, Math.min(20, text.length())))
                    .isNotEmpty();
        }
    }
}
