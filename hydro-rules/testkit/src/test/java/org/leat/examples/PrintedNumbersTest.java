package org.leat.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.check.testing.Example;
import org.leat.check.testing.RuleTestKit;
import org.leat.file.DesignReader;
import org.leat.report.JUnitWriter;
import org.leat.report.MarkdownWriter;
import org.leat.report.ReportWriter;
import org.leat.report.SarifWriter;
import org.leat.report.TextWriter;
import org.leat.report.TextWriter.Colours;

/**
 * Every number that is printed of every example and every demo, in the sentences of every format: none that a reader
 * stumbles over.
 */
class PrintedNumbersTest {

    private static final Path DEMOS = Path.of("../../hydro-examples/designs");
    private static final Rulebook RULES = PackExamples.CHECKER.rulebook();

    /** A number that stands alone: no clause, no file position, no part of a name or a date. */
    private static final String ALONE = "(?<![\\w.:/\\-\\[])([-\u2212+]?\\d+(?:\\.\\d+)?)(?![\\w:/\\](]|\\.\\d|-\\d)";

    private static final Map<String, Pattern> SILLY = Map.of(
            "nothing with a sign or decimals",
            Pattern.compile("(?<![\\w.])(?:[-\u2212]0(?:\\.0+)?|0\\.0+)(?![\\d.\\w]| bar)"),
            "what is left of a rounded sum",
            Pattern.compile("(?<![\\w.])[-\u2212]?0\\.0{5,}\\d"),
            "a percentage above a thousand",
            Pattern.compile("(?<![\\w.])\\d{4,}(?:\\.\\d+)? %"),
            "a power of ten",
            Pattern.compile("(?<![\\w.])\\d+(?:\\.\\d+)?E-?\\d+"),
            "a unit that nobody in the trade reads",
            Pattern.compile("(?<![\\w.])\\d+(?:\\.\\d+)? (?:rad/s|Pa|m³/s|F|H|C|J|S/m|rad|kg/s)(?![\\w·/])"),
            "a length in too small a unit",
            Pattern.compile("(?<![\\w.])\\d{5,}(?:\\.\\d+)? mm(?![\\w²])"),
            "a voltage in too small a unit",
            Pattern.compile("(?<![\\w.])\\d{4,}(?:\\.\\d+)? mV(?!/)"));

    private static final Pattern NUMBER = Pattern.compile(ALONE);
    private static final Pattern UNIT = Pattern.compile(
            "^ (?:%|°C|K|m|mm|km|bar|MPa|L/s|m/s|rpm|V|A|W|kW|kWh|Wh|Ah|N|kN|\u03A9|m\u03A9|s|h|g|kg|mm²|cm²|m²|times)\\b.*");

    private final TreeSet<String> silly = new TreeSet<>();

    /** Most lines of an example are those of its base. */
    private final Set<String> lookedAt = new HashSet<>();

    private void look(String where, String text) {
        for (String told : text.split("\n", -1)) {
            if (!lookedAt.add(told)) {
                continue;
            }
            // a formula's letters are no units, F is a force there; a source's numbers are clauses
            String line = told.replaceAll("(?:\\*\\*)?(?:Formula|Source):.*?(?=\\\\n|$)", "");
            SILLY.forEach((what, pattern) -> {
                Matcher m = pattern.matcher(line);
                if (m.find()) {
                    silly.add(what + ": " + m.group() + " in: " + line.strip() + " (" + where + ")");
                }
            });
            Matcher m = NUMBER.matcher(line);
            while (m.find()) {
                if (significant(m.group(1), line.substring(m.end())) > 4) {
                    silly.add("more than four digits: " + m.group(1) + " in: " + line.strip() + " (" + where + ")");
                }
            }
        }
    }

    /** Digits that say something; of a whole number only where a unit follows. */
    private static int significant(String number, String rest) {
        String digits = number.replaceAll("[-\u2212+]", "");
        boolean whole = !digits.contains(".");
        if (whole && !UNIT.matcher(rest).matches()) {
            return 0;
        }
        String bare = digits.replace(".", "").replaceFirst("^0+", "");
        return (whole ? bare.replaceFirst("0+$", "") : bare).length();
    }

    private void look(String where, Report report) throws IOException {
        StringBuilder text = new StringBuilder();
        write(new TextWriter(RULES, text, Colours.NONE), report);
        look(where + ", text", text.toString());
        StringBuilder markdown = new StringBuilder();
        write(new MarkdownWriter(RULES, markdown), report);
        look(where + ", Markdown", markdown.toString().replace("\\", ""));
        StringBuilder junit = new StringBuilder();
        write(new JUnitWriter(RULES, junit, Level.NOTE), report);
        look(where + ", JUnit", junit.toString());
        StringBuilder sarif = new StringBuilder();
        write(new SarifWriter(RULES, sarif, "1", true), report);
        Matcher m = Pattern.compile(
                        "\"(?:text|markdown)\" ?: ?\"((?:[^\"\\\\]|\\\\.)*)\"|\"arguments\" ?: ?\\[([^\\]]*)\\]")
                .matcher(sarif);
        List<String> said = new ArrayList<>();
        while (m.find()) {
            said.add(m.group(1) == null ? m.group(2).replaceAll("\\s+", " ") : m.group(1));
        }
        look(where + ", SARIF", String.join("\n", said));
    }

    private static void write(ReportWriter writer, Report report) throws IOException {
        writer.add(report);
        writer.end();
    }

    @Test
    void no_number_of_any_demo_or_example_is_one_that_a_reader_stumbles_over() throws IOException {
        RuleTestKit kit = new RuleTestKit(PackExamples.CHECKER);
        for (Example example : PackExamples.some()) {
            look(example.id(), kit.check(example));
        }
        try (Stream<Path> demos = Files.list(DEMOS)) {
            for (Path demo :
                    demos.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                look(String.valueOf(demo.getFileName()), PackExamples.CHECKER.check(DesignReader.read(demo)));
            }
        }
        assertThat(silly).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "falls to -0.00 V",
                "falls to \u22120 W",
                "value 0.000 m",
                "value 380 %, limit 5 %, 7502 % beyond",
                "-0.0000000000000227 °C",
                "it is 12.3456 m",
                "it is 12345 W",
                "turns at 31.4 rad/s",
                "a run of 12340 mm",
                "a hole of 1.2E-7 m",
            })
    void what_a_reader_stumbles_over_is_found(String line) {
        look("here", line);
        assertThat(silly).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "IEC 60364-4-41, 411.3.1 and EN 12201:2024",
                "at f.yaml:12345:6 it is 12.34 m",
                "a bank of 12300 W for 0.5 h, 0.05 bar, 100 %",
                "a price of 12345",
            })
    void what_reads_well_is_left_alone(String line) {
        look("here", line);
        assertThat(silly).isEmpty();
    }
}
