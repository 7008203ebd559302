package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Checker;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.file.DesignReader;
import org.leat.pack.BuiltInPack;
import org.leat.page.PageWriter;
import org.leat.report.TextWriter.Colours;

/** That a water column parts and strikes as it rejoins is told in every format, whatever comes of it. */
class RejoiningInEveryFormatTest {

    private static final Path BROOK = Path.of("src/main/resources/org/leat/pack/bases/brook.yaml");
    private static final String RUN = "{ kind: polyethylene, material: pe100, outside-diameter: 63 mm, sdr: 17 }";

    private final Checker checker = Checker.of(List.of(new BuiltInPack()));

    private interface Writing {
        void to(Appendable out) throws IOException;
    }

    private static String written(Writing writing) throws IOException {
        StringBuilder out = new StringBuilder();
        writing.to(out);
        return out.toString();
    }

    private Map<String, String> formats(Report report) throws IOException {
        Map<String, String> all = new TreeMap<>();
        all.put("text", written(out -> {
            TextWriter writer = new TextWriter(checker.rulebook(), out, Colours.NONE);
            writer.add(report);
            writer.end();
        }));
        all.put("json", written(out -> {
            JsonWriter writer = new JsonWriter(checker.rulebook(), out);
            writer.add(report);
            writer.end();
        }));
        all.put("sarif", written(out -> {
            SarifWriter writer = new SarifWriter(checker.rulebook(), out, "1", false);
            writer.add(report);
            writer.end();
        }));
        all.put("junit", written(out -> {
            JUnitWriter writer = new JUnitWriter(checker.rulebook(), out, Level.ERROR);
            writer.add(report);
            writer.end();
        }));
        all.put("markdown", written(out -> {
            MarkdownWriter writer = new MarkdownWriter(checker.rulebook(), out);
            writer.add(report);
            writer.end();
        }));
        all.put("html", written(out -> {
            PageWriter writer = new PageWriter(checker.rulebook(), out);
            writer.add(report);
            writer.end();
        }));
        return all;
    }

    @ParameterizedTest
    @CsvSource({
        "'{ kind: pvc-u, outside-diameter: 63 mm, pressure-rating: 10 bar }', 3 kN, 'sees up to 19 bar as its water column, parted when"
                + " the water is stopped in 0 s, rejoins; before that 7.93 bar'",
        "'" + RUN
                + "', 3.6 kN, 'The water column parts and rejoins. Up to the blow after the first cavity 3600 N is not exceeded'",
        "'{ kind: pvc-u, outside-diameter: 63 mm, pressure-rating: 10 bar }', 5 kN, 'the water column parts, and what is computed of the"
                + " blows when it rejoins does not settle it'"
    })
    void each_says_it(String pipe, String anchors, String told) throws IOException {
        String design = Files.readString(BROOK)
                .replace(RUN, pipe)
                .replace("anchors: 3 kN", "anchors: " + anchors)
                .replace("rated-fittings: 12.5 bar", "rated-fittings: 16 bar")
                .replace("15 s", "60 s");
        Report report = checker.check(DesignReader.read(design, "brook.yaml"));
        formats(report)
                .forEach((format, text) ->
                        assertThat(text.replaceAll("[\\s&]+", " ")).as(format).contains(told));
    }
}
