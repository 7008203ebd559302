package org.leat.rulefile;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Checker;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.RulePack;
import org.leat.check.Samples;
import org.leat.check.testing.RuleExamples;
import org.leat.expression.Reference;
import org.leat.file.DesignReader;
import org.leat.file.ProblemText;
import org.leat.rulefile.RuleFile.RuleFileReading;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

class RuleFileTest {

    private static final Path DOCS = Path.of("../../docs");

    private static String rule(String deciding) {
        return """
                format: 1
                name: test
                rules:
                  - id: test/one
                    level: warning
                    title: t
                    why: w
                    source: s
                    judged: j
                    fails: "no"
                """ + deciding.indent(4);
    }

    private static RulePack pack(String text) {
        RuleFileReading reading = RuleFile.read(text, "rules.yaml");
        assertThat(reading.problems()).isEmpty();
        return Objects.requireNonNull(reading.pack());
    }

    private static List<String> problems(String text) {
        return RuleFile.read(text, "rules.yaml").problems().stream()
                .map(ProblemText::line)
                .toList();
    }

    private static List<Finding> judged(String deciding) {
        return Checker.of(List.of(pack(rule(deciding))))
                .check(Samples.reading())
                .findings();
    }

    private static String documented() throws IOException {
        Matcher m = Pattern.compile("```yaml\n(format: 1\nname: hill.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(DOCS.resolve("own-rules.md")));
        assertThat(m.find()).isTrue();
        return m.group(1);
    }

    @Test
    void the_file_in_the_docs_is_judged_as_it_says() throws IOException {
        RulePack pack = pack(documented());
        RuleExamples pressure = RuleExamples.of(pack, "hill/crew-pressure", Samples.SHORT);
        assertThat(pressure.passes()).hasSize(1);
        assertThat(pressure.with("24 m", "60 m").fails())
                .singleElement()
                .asString()
                .contains("run stands at", "4 bar");
        RuleExamples head = RuleExamples.of(pack, "hill/head-kept", Samples.SHORT);
        head.passes();
        head.with("[10 mm]", "[20 mm, 20 mm]").fails();
    }

    @Test
    void a_value_and_its_limit_reach_the_report_as_a_comparison() {
        assertThat(judged("for-each: penstock.sections\nvalue: each.staticPressure\nat-most: 1.bar()"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.outcome().kind()).isEqualTo(Kind.FAIL);
                    assertThat(f.outcome().path()).isEqualTo("/penstock/sections[run]");
                    assertThat(f.outcome().comparison()).isNotNull();
                    assertThat(f.outcome().comparison().high()).isEqualTo(1e5);
                    assertThat(f.outcome().comparison().value()).isBetween(2.3e5, 2.4e5);
                    assertThat(f.outcome().comparison().limits()).isNull();
                });
        assertThat(judged("limits: { low: { value: 10 m, source: s }, high: { value: 30 m, source: s } }\n"
                        + "at: /site\nvalue: site.grossHead\nat-least: limit.low\nat-most: limit.high"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.outcome().kind()).isEqualTo(Kind.PASS);
                    assertThat(f.outcome().comparison().limits()).isEqualTo("low, high");
                });
    }

    @Test
    void a_case_of_the_plant_is_told() {
        assertThat(judged("for-each: running\nmust: each.held"))
                .singleElement()
                .satisfies(f -> assertThat(f.outcome().during()).isEqualTo("running/10 mm"));
    }

    @Test
    void a_missing_value_is_open_and_names_its_field() {
        assertThat(judged("value: penstock.fittingsRating\nat-least: 6.bar()"))
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.outcome().kind()).isEqualTo(Kind.OPEN);
                    assertThat(f.outcome().missing()).isEqualTo("/penstock/rated-fittings");
                    assertThat(f.broke()).isFalse();
                });
        assertThat(judged("must: design.runner.pitchDiameter > 1.mm()"))
                .singleElement()
                .satisfies(f -> assertThat(f.outcome().missing()).isEqualTo("/runner"));
    }

    @Test
    void a_plant_that_cannot_be_solved_is_open_and_no_pass() {
        var reading = DesignReader.read(Samples.SHORT.replace("pole-pairs: 6", ""), "sample.yaml");
        var report =
                Checker.of(List.of(pack(rule("must: running.all(r, r.held)")))).check(reading);
        if (!report.unsolved().isEmpty()) {
            assertThat(report.findings()).allMatch(f -> f.outcome().kind() == Kind.OPEN);
        } else {
            assertThat(report.findings()).hasSize(1);
        }
    }

    @Test
    void what_does_not_apply_says_so_and_what_cannot_be_computed_breaks_alone() {
        assertThat(judged("when: site.grossHead > 100.m()\nmust: false"))
                .singleElement()
                .satisfies(f -> assertThat(f.outcome().kind()).isEqualTo(Kind.NOT_APPLICABLE));
        assertThat(judged("for-each: penstock.sections.filter(s, s.length > 1.km())\nmust: false"))
                .singleElement()
                .satisfies(f -> assertThat(f.outcome().kind()).isEqualTo(Kind.NOT_APPLICABLE));
        assertThat(judged("must: running[9].held")).singleElement().satisfies(f -> {
            assertThat(f.outcome().kind()).isEqualTo(Kind.OPEN);
            assertThat(f.broke()).isTrue();
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    must: penstok.length > 1.m()                      | 11:11 | must: nothing is called "penstok"
                    'must: "penstock.length > 1.bar()"'               | 11:28 | must: found ">" with (length, pressure)
                    must: penstock.length                             | 11:11 | must: found length; expected true or false
                    for-each: site\\nmust: true                       | 11:15 | for-each: found site; expected a list of things
                    value: site.grossHead\\nat-most: 4.bar()          | 12:14 | at-most: found pressure; expected length, as the value is
                    value: site.grossHead                             | 4:5   | at-most: missing; expected at-most or at-least
                    at-most: 4.bar()                                  | 4:5   | must: missing; expected either must, or value
                    must: true\\nat-most: 4.bar()                     | 4:5   | value: missing; expected a value to compare
                    must: true\\nvalue: site.grossHead                | 11:11 | must: found true, which contradicts the rest
                    must: true\\nat: penstock                         | 12:9  | at: found penstock, which cannot be; expected a place in a design
                    must: true\\npasses: 'now {nothing}'              | 12:13 | passes: found {nothing}; expected one that something fills: {at}
                    must: true\\nmsut: true                           | 12:5  | msut: no field is called "msut"; did you mean "must"?
                    must: true\\nlimits: { a: { value: 4, sorce: s } } | 12:30 | limits[a]/sorce: no field is called "sorce"
                    must: true\\nlimits: { a: { value: 4 bra, source: s } } | 12:27 | limits[a]/value: found "4 bra"
                    must: true\\nlimits: { A: { value: 4, source: s } } | 12:15 | limits[A]: found A, which cannot be
                    must: true\\nshow: { at: site.grossHead }         | 12:13 | show[at]: found at, which cannot be
                    must: true\\nshow: { a: site }                    | 12:16 | show[a]: found site; expected a quantity
                    must: design.name.matches('(')                    | 11:30 | must: found a pattern that is no regular expression
                    must: 1 / 0 > 2                                   | 11:13 | must: found a division by 0
                    must: true and true                               | 11:16 | must: found "and"; expected &&
                    must:                                             | 11:10 | must: has no value
                    """)
    void a_wrong_rule_is_told_at_its_place(String deciding, String at, String said) {
        String text = rule(deciding.replace("\\n", "\n"));
        assertThat(problems(text))
                .anySatisfy(p -> assertThat(p).startsWith("rules.yaml:" + at + ": /rules[0]/" + said));
    }

    @Test
    void a_place_in_a_block_of_text_is_that_of_the_file() {
        assertThat(problems(rule("must: |\n  site.grossHead > 1.m()\n    && penstok.length > 1.m()")))
                .singleElement()
                .asString()
                .startsWith("rules.yaml:13:12: /rules[0]/must: nothing is called");
        assertThat(problems(rule("must: >-\n  site.grossHead > 1.m()\n  && penstok.length > 1.m()")))
                .singleElement()
                .asString()
                .startsWith("rules.yaml:13:10: /rules[0]/must: nothing is called");
        assertThat(problems(rule("must: \"'\\\"' != '' && penstok.length > 1.m()\"")))
                .singleElement()
                .asString()
                .startsWith("rules.yaml:11:26: /rules[0]/must: nothing is called");
        assertThat(problems(rule("must: site.grossHead > 1.m()\n  && penstok.length > 1.m()")))
                .singleElement()
                .asString()
                .startsWith("rules.yaml:12:10: /rules[0]/must: nothing is called");
    }

    @Test
    @Timeout(60) // not a claim about speed: what is not bounded never ends
    void what_is_no_rule_file_is_refused_with_a_place() {
        for (String text : List.of(
                "",
                "[",
                "- 1",
                "format: 2\nname: a\nrules: []",
                "name: a\nrules: [{}]",
                "format: 1\nname: a\nrules: [1, [], null]",
                "format: 1\nname: a",
                "format: 1\nformat: 1\nname: a\nrules: []",
                "&a [*a, *a]",
                "[".repeat(100_000),
                "{a: ".repeat(5000),
                "x".repeat((1 << 20) + 1))) {
            assertThat(problems(text))
                    .as(text.substring(0, Math.min(40, text.length())))
                    .isNotEmpty()
                    .allMatch(p -> p.startsWith("rules.yaml:"));
        }
    }

    @Test
    void two_rules_of_one_id_are_refused() {
        String twice = rule("must: true");
        assertThat(problems(twice + twice.substring(twice.indexOf("  - id"))))
                .anyMatch(p -> p.endsWith("/rules[1]/id: \"test/one\" is given twice, first in line 4"));
    }

    @Test
    void a_file_in_json_is_read_too() {
        assertThat(pack("""
                {"format": 1, "name": "a", "rules": [{"id": "a/b", "level": "note", "title": "t", "why": "w",
                 "source": ["s", "u"], "judged": "j", "must": "true", "fails": "no"}]}
                """).rules()).hasSize(1);
    }

    private static String json(String yaml) throws IOException {
        Object read = new Load(LoadSettings.builder().build()).loadFromString(yaml);
        return new ObjectMapper().writeValueAsString(read);
    }

    private static void holds(String file, String now) throws IOException {
        Path page = DOCS.resolve(file);
        if (Boolean.getBoolean("leat.write-docs")) {
            Files.writeString(page, now);
        }
        assertThat(Files.readString(page)).isEqualTo(now);
    }

    @Test
    void the_names_in_the_docs_are_those_of_the_program() throws IOException {
        holds("expression-names.md", Reference.page());
    }

    @Test
    void the_schema_in_the_docs_is_that_of_the_program() throws IOException {
        holds("rule-file.schema.json", RuleFile.schema());
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(RuleFile.schema());
        assertThat(schema.validate(json(documented()), InputFormat.JSON)).isEmpty();
        assertThat(schema.validate(json(documented().replace("level: note", "level: bad")), InputFormat.JSON))
                .isNotEmpty();
        assertThat(schema.validate(json(documented().replace("why:", "wyh:")), InputFormat.JSON))
                .isNotEmpty();
    }

    /** Three hundred lamps on one battery: nested loops over them are judged one lamp after the other. */
    private static String lamps() {
        StringBuilder text = new StringBuilder(Samples.SHORT).append("loads:\n");
        for (int i = 0; i < 300; i++) {
            text.append("  - { name: lamp ").append(i).append(", power: 5 W, hours-per-day: 4 }\n");
        }
        return text.toString();
    }

    @Test
    @Timeout(60) // not a claim about speed: what is not bounded takes far longer
    void loops_in_loops_over_many_things_end_and_leave_the_rule_open() {
        var lamps = DesignReader.read(lamps(), "lamps.yaml");
        assertThat(lamps.problems()).isEmpty();
        RulePack pack = pack(
                rule(
                        "for-each: design.loads\nmust: design.loads.map(a, design.loads.filter(b, b.power == a.power).size()).size() > 1"));
        assertThat(Checker.of(List.of(pack)).check(lamps).findings())
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.broke()).isTrue();
                    assertThat(f.outcome().kind()).isEqualTo(Kind.OPEN);
                });
        RulePack plain = pack(rule("for-each: design.loads\nmust: each.power < 10.W()"));
        assertThat(Checker.of(List.of(plain)).check(lamps).findings())
                .hasSize(300)
                .allMatch(f -> f.outcome().kind() == Kind.PASS);
    }
}
