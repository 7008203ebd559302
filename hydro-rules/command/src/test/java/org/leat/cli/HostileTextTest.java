package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leat.cli.Said.leat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;

/** Names and notes that would like to be code, in whatever this program prints. */
class HostileTextTest {

    private static final String EXAMPLES = "../../hydro-examples/";

    /** In a quoted YAML text: ANSI, a carriage return, marks of direction, a C1 control, a line separator, no character, null. */
    private static final String CONTROLS = "\\e[31m\\r\\u202E\\u2066\\x9B31m\\u2028\\uFFFE\\0\\b";

    private static final String WOULD_BE =
            "::error::owned ##[error]x </script><script>alert(1)</script><img src=x onerror=alert(1)>]]>&amp;\\n::error file=x::owned\\n##[error]owned"
                    + " [click](javascript:alert(1)) `x` | a |\\n# owned ${{ x }} <!-- ";

    private static final String HOSTILE = "\"" + (WOULD_BE + CONTROLS).substring(0, 99) + "\"";
    private static final String ENDS = "\"" + CONTROLS + "\\n::error::owned ::error::owned ##[group]x </title><b>\"";

    /** Of such letters what the reader takes; it refuses controls. */
    private static final String READ =
            "\"\\u202E\\u2066\\u2028\\uFEFF\\n::error::owned ::error::owned ##[group]x </title><b>\"";

    /** Within a word, which is broken where it is longer than a line. */
    private static final String WITHIN =
            "\"" + "x".repeat(30) + "::error::o##[group]o##vso[task.setvariable v=o]##teamcity[o\"";

    /** What a service obeys wherever it stands in a line. */
    private static final Pattern ANYWHERE = Pattern.compile("##\\w*\\[");

    private static final Pattern RAW = Pattern.compile(
            "[\\x00-\\x08\\x0b-\\x1f\\x7f-\\x9f\\u200e\\u200f\\u2028\\u2029\\u202a-\\u202e\\u2066-\\u2069\\ud800-\\udfff\\ufffe\\uffff]");

    @TempDir
    Path folder;

    private Path design;

    @BeforeEach
    void hostile() throws IOException {
        String hut = Files.readString(Path.of(EXAMPLES + "designs/rowan-ghyll.yaml"));
        String text = hut.replace("name: Rowan Ghyll hut", "name: " + HOSTILE + "\nnotes: " + HOSTILE)
                .replace("name: run\n", "name: " + READ + "\n")
                .replace("name: battery fuse", "name: " + HOSTILE)
                .replace("name: inverter fuse", "name: " + READ)
                .replace("name: lead fuse", "name: " + WITHIN)
                .replace("name: laptop", "name: " + HOSTILE)
                .replace("protection: IP55", "protection: " + READ)
                .replace("material: aluminium-cast", "material: " + HOSTILE)
                .replace(
                        "standard: ISO 4427, material: pe100, outside-diameter: 63 mm, sdr: 17",
                        "standard: " + READ + ", material: pe100, outside-diameter: 63 mm, sdr: 17")
                .replace("autonomy-wanted: 8 h", "autonomy-wanted: 900 h");
        design = folder.resolve("d.yaml");
        Files.writeString(design, text);
    }

    /** Lines of a log that a service would take for a command, and bytes that a terminal would. */
    private static void harmless(String what, String text) {
        Matcher raw = RAW.matcher(text);
        String found = raw.find()
                ? text.substring(Math.max(0, raw.start() - 60), Math.min(text.length(), raw.end() + 20))
                : "";
        assertThat(found).as(what).isEmpty();
        for (String line : text.split("\n", -1)) {
            assertThat(line.stripLeading()).as(what).doesNotStartWith("::");
            assertThat(line).as(what).doesNotContainPattern(ANYWHERE);
        }
    }

    @Test
    void no_command_prints_what_a_terminal_or_a_service_would_obey() {
        String file = design.toString();
        String readings = EXAMPLES + "readings/rowan-ghyll-november.yaml";
        for (List<String> call : List.of(
                List.of("check", file),
                List.of("check", "--whole", file),
                List.of("check", "--whole", "--colour=never", file),
                List.of("check", "--format=markdown", file),
                List.of("check", "--format=junit", file),
                List.of("check", "--format=sarif", file),
                List.of("check", "--format=json", "--whole", file),
                List.of("check", "--format=html", file),
                List.of("mend", file),
                List.of("start", file),
                List.of("start", "--empty-readings", file),
                List.of("readings", file, readings),
                List.of("learn", file, readings),
                List.of("log", file, EXAMPLES + "readings/rowan-ghyll-log.csv"),
                List.of("year", "--flow=" + EXAMPLES + "streams/rowan-ghyll.csv", file))) {
            Said said = leat(call.toArray(String[]::new));
            assertThat(said.code())
                    .as("%s: %s %s", call, said.err(), said.out())
                    .isIn(0, 1, 4);
            assertThat(said.out()).as(call.toString()).isNotEmpty();
            harmless(call.toString(), said.out());
            harmless(call.toString(), said.err());
        }
    }

    @Test
    void readings_and_series_that_would_like_to_be_code_are_told_as_text() throws IOException {
        Path readings = folder.resolve("r.yaml");
        Files.writeString(
                readings,
                Files.readString(Path.of(EXAMPLES + "readings/rowan-ghyll-november.yaml"))
                        .replaceFirst("name: .*", Matcher.quoteReplacement("name: " + ENDS)));
        Path odd = folder.resolve("odd.yaml");
        Files.writeString(odd, "format: 1\nname: " + ENDS + "\nsets:\n  - nozzles: " + ENDS + "\n" + ENDS + ": 1\n");
        Path series = folder.resolve("s.csv");
        Files.writeString(series, "date,flow_l_s\n\u001b[31m::error::owned,\u202e\n2023-01-01,<script>\n");
        Path log = folder.resolve("l.csv");
        Files.writeString(log, "day,\u001b[31m::error::owned [bar],speed [rpm]\n\u202e::error::x,<b>,\u0007\n");
        Path settings = folder.resolve("settings.yaml");
        Files.writeString(settings, "format: 1\nrules:\n  " + ENDS + ": off\n");
        Path rules = folder.resolve("rules.yaml");
        Files.writeString(rules, "format: 1\nname: " + ENDS + "\nrules:\n  - id: " + ENDS + "\n");
        String hut = EXAMPLES + "designs/rowan-ghyll.yaml";
        for (List<String> call : List.of(
                List.of("readings", hut, readings.toString()),
                List.of("readings", "--format=json", hut, readings.toString()),
                List.of("readings", hut, odd.toString()),
                List.of("learn", hut, odd.toString()),
                List.of("gauge", odd.toString()),
                List.of("log", hut, odd.toString()),
                List.of("log", hut, log.toString()),
                List.of("year", "--flow=" + series, hut),
                List.of("check", odd.toString()),
                List.of("check", "--format=html", odd.toString()),
                List.of("check", "--format=markdown", odd.toString()),
                List.of("check", "--settings=" + settings, hut),
                List.of("check", "--pack=" + rules, hut),
                List.of("check", "--baseline=" + log, hut),
                List.of("explain", "\u001b[31m\n::error::owned\u202e"))) {
            Said said = leat(call.toArray(String[]::new));
            assertThat(said.code()).as("%s: %s", call, said.err()).isIn(0, 1, 2, 3);
            harmless(call.toString(), said.out());
            harmless(call.toString(), said.err());
            assertThat(said.err()).doesNotContain("\tat ");
        }
    }

    @Test
    void a_rule_file_and_settings_that_would_like_to_be_code_are_told_as_text() throws IOException {
        Path rules = folder.resolve("rules ##[group]x.yaml");
        Files.writeString(
                rules,
                Files.readString(Path.of(EXAMPLES + "regional-rules/rules/kettle-hill.yaml"))
                        .replaceFirst("title: .*", Matcher.quoteReplacement("title: " + READ))
                        .replaceFirst("why: .*", Matcher.quoteReplacement("why: " + READ))
                        .replaceFirst("(?m)^    source: .*", Matcher.quoteReplacement("    source: " + READ))
                        .replaceFirst("judged: .*", Matcher.quoteReplacement("judged: " + READ))
                        .replaceFirst(
                                "4 bar, source: .* \\}", Matcher.quoteReplacement("1 bar, source: " + READ + " }"))
                        .replaceFirst("fails: .*", Matcher.quoteReplacement("fails: " + READ)));
        Path settings = folder.resolve("settings ##[group]x.yaml");
        Files.writeString(
                settings,
                "format: 1\nrules:\n  penstock/velocity: { limits: { velocity: 0.5 m/s }, reason: " + READ
                        + " }\n  kettlehill/head-kept: { level: warning, reason: " + READ + " }\n");
        String hut = EXAMPLES + "designs/rowan-ghyll.yaml";
        List<String> both = List.of("--pack=" + rules, "--settings=" + settings);
        for (List<String> call : List.of(
                List.of("rules"),
                List.of("settings", "--all"),
                List.of("explain", "kettlehill/crew-pressure"),
                List.of("explain", "penstock/velocity"),
                List.of("mend", hut),
                List.of("check", "--whole", hut),
                List.of("check", "--format=json", hut),
                List.of("check", "--format=sarif", hut),
                List.of("check", "--format=junit", hut),
                List.of("check", "--format=markdown", hut),
                List.of("check", "--format=html", hut))) {
            Said said = leat(Stream.concat(call.stream(), both.stream()).toArray(String[]::new));
            assertThat(said.code()).as("%s: %s", call, said.err()).isIn(0, 1);
            assertThat(said.out()).as(call.toString()).isNotEmpty();
            harmless(call.toString(), said.out());
            harmless(call.toString(), said.err());
        }
    }

    @Test
    void a_file_named_like_a_call_for_help_is_never_a_passed_check() {
        Said said = leat("check", design.toString(), "-h.plant.yaml");
        assertThat(said.code()).isEqualTo(2);
        assertThat(said.out()).isEmpty();
        assertThat(leat("check", "-V.plant.yaml").code()).isEqualTo(2);
        assertThat(leat("check", "--", "-h.plant.yaml").code()).isEqualTo(3);
        assertThat(leat("check", "-h").out()).contains("Usage:");
    }

    @Test
    void a_folder_named_like_a_command_is_told_as_text() {
        Path out = folder.resolve("##[group]x");
        Said said = leat("propose", "--write=" + out, EXAMPLES + "surveys/alder-clough.yaml");
        assertThat(said.out()).contains("group]x");
        harmless("propose", said.out());
    }

    @Test
    void json_says_the_very_characters_that_it_tells_by_their_codes() throws Exception {
        Files.copy(design, folder.resolve("##[group]##vso[x].yaml"));
        String json = leat(
                        "check",
                        "--format=json",
                        folder.resolve("##[group]##vso[x].yaml").toString())
                .out();
        assertThat(json).doesNotContainPattern(ANYWHERE);
        assertThat(new ObjectMapper().readTree(json).findValuesAsText("file"))
                .anyMatch(file -> file.endsWith("##[group]##vso[x].yaml"));
    }

    @Test
    void every_format_stays_what_it_is() throws Exception {
        String file = design.toString();
        new ObjectMapper()
                .readTree(leat("check", "--format=json", "--whole", file).out());
        new ObjectMapper().readTree(leat("check", "--format=sarif", file).out());
        new ObjectMapper()
                .readTree(leat("year", "--format=json", "--flow=" + EXAMPLES + "streams/rowan-ghyll.csv", file)
                        .out());
        String junit = leat("check", "--format=junit", file).out();
        assertThat(DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(junit)))
                        .getElementsByTagName("img")
                        .getLength())
                .isZero();
        String html = leat("check", "--format=html", file).out();
        assertThat(html).doesNotContain("<script", "<img", "<b>");
        String markdown = leat("check", "--format=markdown", "--whole", file).out();
        assertThat(markdown)
                .doesNotContain("<script", "<img", "<!--", "](javascript")
                .doesNotContainPattern("(?m)^# owned");
    }
}
