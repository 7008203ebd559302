package org.leat.report.testing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Checker;
import org.leat.check.Finding;
import org.leat.check.Report;
import org.leat.file.DesignReader;
import org.leat.file.Reading;

/**
 * Tests rules with pairs of files: a design, {@code name.yaml}, and beside it what is to be found in it,
 * {@code name.expected.yaml}:
 *
 * <pre>
 * rules: [penstock/velocity]       # every finding of these; left out: whatever needs attention, of all rules
 * findings:
 *   - rule: penstock/velocity
 *     kind: fail
 *     level: warning
 *     at: "9:7"                    # line and column
 *     case: running/12 mm
 *     value: 3.41 m/s
 *     limit: at most 3 m/s
 *     text: Water runs at …
 * </pre>
 *
 * <p>Fields that are left out of a finding are not compared; a finding that is left out is a difference.
 */
public final class RuleTestKit {

    private static final String DESIGN = ".yaml";
    private static final String EXPECTED = ".expected.yaml";

    private final Checker checker;
    private final Told told;

    /** Tests the rules of a checker. */
    public RuleTestKit(Checker checker) {
        this.checker = checker;
        this.told = new Told(checker.rulebook());
    }

    /** {@return the designs below a folder that have an expectation beside them, sorted} */
    public static List<Path> designs(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(f -> f.toString().endsWith(DESIGN))
                    .filter(f -> Files.exists(expectation(f)))
                    .sorted()
                    .toList();
        }
    }

    /** {@return where the expectation of a design stands} */
    public static Path expectation(Path design) {
        String name = String.valueOf(design.getFileName());
        return design.resolveSibling(name.substring(0, name.length() - DESIGN.length()) + EXPECTED);
    }

    /** {@return what comes of checking a design} */
    public Report check(Path design) throws IOException {
        return checker.check(read(design));
    }

    /** {@return every difference between what is found in a design and what is expected; empty if there is none} */
    public List<String> differences(Path design) throws IOException {
        Reading reading = read(design);
        if (reading.design() == null) {
            return reading.problems().stream()
                    .map(p -> "not a design: " + org.leat.file.ProblemText.line(p))
                    .toList();
        }
        Expectation expected = Expectation.read(Files.readString(expectation(design)));
        List<Told.Line> left = new ArrayList<>(told.lines(found(checker.check(reading), expected.rules())));
        List<String> differences = new ArrayList<>();
        for (Told.Line line : expected.findings()) {
            Told.Line match = left.stream().filter(line::isMetBy).findFirst().orElse(null);
            if (match == null) {
                differences.add("not found: " + line.yaml(""));
            } else {
                left.remove(match);
            }
        }
        left.forEach(line -> differences.add("not expected: " + line.yaml("")));
        return differences;
    }

    /**
     * {@return the expectation that would be met now} For a first draft: look at every line before keeping it.
     *
     * @param rules whose every finding is told; empty for whatever needs attention
     */
    public String draft(Path design, List<String> rules) throws IOException {
        StringBuilder text = new StringBuilder();
        if (!rules.isEmpty()) {
            text.append("rules: [").append(String.join(", ", rules)).append("]\n");
        }
        text.append("findings:\n");
        for (Told.Line line : told.lines(found(check(design), rules))) {
            text.append(line.yaml("  "));
        }
        return text.toString();
    }

    private static List<Finding> found(Report report, List<String> rules) {
        return report.findings().stream()
                .filter(f -> rules.isEmpty()
                        ? f.outcome().kind().needsAttention()
                        : rules.contains(f.outcome().rule()))
                .toList();
    }

    private static Reading read(Path design) throws IOException {
        String name = String.valueOf(design.getFileName());
        return DesignReader.read(new String(Files.readAllBytes(design), StandardCharsets.UTF_8), name);
    }
}
