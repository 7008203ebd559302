package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.check.Report;
import org.leat.file.DesignReader;
import org.leat.pack.BuiltInPack;

/** Every word of a report has a sentence that a builder understands. */
class GlossaryTest {

    private static final Path DOC = Path.of("../docs/nomenclature.md");
    private static final Checker CHECKER = Checker.of(List.of(new BuiltInPack()));
    private static final String BEGIN = "<!-- words -->\n";
    private static final String END = "<!-- end of words -->\n";

    private static final List<String> DESIGNS = List.of(
            "../hydro-examples/designs/tannery-yard.yaml",
            "../hydro-examples/designs/orchard-sluice.yaml",
            "../hydro-examples/designs/rowan-ghyll.yaml",
            "../hydro-examples/designs/first-try.yaml",
            "src/main/resources/org/leat/pack/bases/sound-tracking.yaml");

    private static List<Report> reports() {
        return DESIGNS.stream()
                .map(name -> CHECKER.check(DesignReader.read(Path.of(name))))
                .toList();
    }

    /** Names of nozzle sets and numbers with their units are the plant's own. */
    private static boolean isOfThePlant(String cell, Report report) {
        return cell.isEmpty()
                || cell.matches(".*[0-9].*")
                || report.running().stream()
                        .anyMatch(r -> cell.startsWith(r.nozzles().name()))
                || report.profile().points().stream().anyMatch(p -> p.at().equals(cell));
    }

    private static List<String> tables(Report report) {
        List<String> lines = new ArrayList<>(OperatingText.lines(report, 100));
        lines.addAll(BusText.lines(report, 100));
        lines.addAll(WattsText.lines(report, 100));
        new ProfileText(new Wording(CHECKER.rulebook()))
                .lines(report, 100).stream().limit(1).forEach(lines::add);
        lines.removeIf(line -> line.startsWith("regulator: ") || line.startsWith("* ")); // sentences of their own
        return lines;
    }

    @Test
    void every_word_of_a_table_is_explained() {
        Glossary words = Glossary.shipped();
        Set<String> unknown = new TreeSet<>();
        for (Report report : reports()) {
            for (String line : tables(report)) {
                for (String cell : line.strip().split(" {2,}", -1)) {
                    boolean plain =
                            cell.startsWith("after ") || cell.startsWith("the ") || cell.matches("unknown|nothing");
                    if (!plain && !isOfThePlant(cell, report) && words.sentence(cell) == null) {
                        unknown.add(cell);
                    }
                }
            }
        }
        assertThat(unknown).isEmpty();
    }

    @Test
    void every_case_is_explained() {
        Glossary words = Glossary.shipped();
        Set<String> cases = reports().stream()
                .flatMap(r -> r.findings().stream())
                .map(f -> f.outcome().during())
                .filter(during -> during.contains("/") || during.equals("shut"))
                .map(during -> during.replaceFirst("/.*", ""))
                .collect(Collectors.toSet());
        assertThat(cases).contains("running", "closing", "load-lost");
        assertThat(cases).allMatch(word -> words.sentence(word) != null);
    }

    @Test
    void the_labels_of_the_first_screen_are_explained() {
        Glossary words = Glossary.shipped();
        assertThat(Stream.of(
                        "SDR",
                        "PE 100",
                        "wheel",
                        "deflector",
                        "star point",
                        "holds the wheel",
                        "speed limit",
                        "Safe to open?",
                        "It gives",
                        "Understood",
                        "question of safety",
                        "clears",
                        "settles",
                        "advice"))
                .allMatch(word -> words.sentence(word) != null);
        assertThat(words.sentence("no such word")).isNull();
    }

    @Test
    void the_nomenclature_lists_the_same_words() throws IOException {
        StringBuilder list = new StringBuilder();
        Glossary.shipped()
                .all()
                .forEach((word, sentence) -> list.append("- **")
                        .append(word)
                        .append("**: ")
                        .append(sentence)
                        .append(".\n"));
        String doc = Files.readString(DOC);
        int from = doc.indexOf(BEGIN) + BEGIN.length();
        String now = doc.substring(0, from) + list + doc.substring(doc.indexOf(END));
        if (Boolean.getBoolean("leat.write-docs")) {
            Files.writeString(DOC, now);
        }
        assertThat(Files.readString(DOC)).isEqualTo(now);
    }
}
