package org.leat.check.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.apiguardian.api.API;
import org.leat.check.Checker;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Report;
import org.leat.check.RuleInForce;
import org.leat.file.Reading;

/**
 * Tests rules with files of examples. An example is a base design, what is changed in it, and everything that is to be
 * found then:
 *
 * <pre>
 * rule: penstock/velocity
 * examples:
 *   fails:
 *     why: A short narrow piece in which the water runs fast.
 *     base: brook                     # brook.yaml beside this file, or in a folder bases there or above
 *     change:
 *       /penstock/sections[inlet]/pipe/outside-diameter: 40 mm
 *     expect:
 *       - penstock/velocity: {kind: fail, level: warning, at: '/penstock/sections[inlet]/pipe', case: running/12 mm, …}
 *         text: Water runs at …
 *         ways-out:
 *           - text: Section inlet in …
 *             watts: 21.3 W
 *             edits: {'/penstock/sections[inlet]/pipe/outside-diameter': 75 mm}
 * </pre>
 *
 * <p>Every finding of the rule, and of those named under {@code rules}, must be expected as it is: kind, level, place,
 * case, value, limit, text, and each way out with its numbers. Only a position may be left out. An example without
 * expectations, of a rule that is not run, of a rule that breaks or with a change that changes nothing is a difference.
 *
 * <p>With {@code -Dleat.draft-expectations=true} an expectation that is missing is written into the file, and the
 * example still differs in that run: look at every line before you keep it. One that is there is never touched, unless
 * its example is named: {@code -Dleat.draft-expectations=penstock/velocity:fails}. A rule that is named drafts its own examples, and
 * adds what it finds to those of whole plants that tell nothing of it yet: {@code -Dleat.draft-expectations=penstock/velocity}.
 *
 * <p>Safe to share between threads.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class RuleTestKit {

    static final String BASES = "bases";
    private static final String DRAFT = "leat.draft-expectations";
    private static final String YAML = ".yaml";

    private final Checker checker;
    private final Telling telling;
    private final Drafts drafts;
    private final Set<String> run;
    private final Map<List<String>, Report> reports = new ConcurrentHashMap<>();

    /** Tests the rules of a checker. */
    public RuleTestKit(Checker checker) {
        this(checker, Drafts.of(System.getProperty(DRAFT, "")));
    }

    RuleTestKit(Checker checker, Drafts drafts) {
        this.checker = checker;
        this.telling = new Telling(checker.rulebook());
        this.drafts = drafts;
        this.run = new TreeSet<>();
        for (RuleInForce rule : checker.rulebook().rules()) {
            if (rule.off() == null) {
                run.add(rule.card().id());
            }
        }
    }

    /**
     * {@return every example of the files below a folder, by file and in their order}
     *
     * @param bases where else base designs are looked for
     * @throws IllegalArgumentException if there is none, a file is neither of examples nor a base design that one of them
     *     uses, or two examples have the same id
     */
    public static List<Example> examples(Path folder, Path... bases) throws IOException {
        List<Example> examples = new ArrayList<>();
        Set<Path> others = new TreeSet<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(YAML)).sorted().toList()) {
                if (isBase(file) || !Files.readString(file).contains(ExampleReader.EXAMPLES + ":")) {
                    others.add(file);
                } else {
                    examples.addAll(ExampleReader.read(folder, List.of(bases), file));
                }
            }
        }
        examples.forEach(example -> others.remove(example.base()));
        if (!others.isEmpty()) {
            throw new IllegalArgumentException("neither examples nor the base of one: " + others);
        }
        Set<String> ids = new HashSet<>();
        for (Example example : examples) {
            if (!ids.add(example.id())) {
                throw new IllegalArgumentException("two examples are called " + example.id());
            }
        }
        if (examples.isEmpty()) {
            throw new IllegalArgumentException("no example below " + folder);
        }
        return List.copyOf(examples);
    }

    private static boolean isBase(Path file) {
        Path folder = file.getParent();
        return folder != null && folder.endsWith(BASES);
    }

    /**
     * {@return of which kinds of finding each rule has no example, of pass, fail and open; nothing of a rule that has all}
     * An example counts for whatever it expects.
     */
    public static Map<String, Set<Kind>> withoutExample(Collection<String> rules, Collection<Example> examples) {
        Map<String, Set<Kind>> without = new TreeMap<>();
        for (String rule : rules) {
            Set<Kind> kinds = EnumSet.of(Kind.PASS, Kind.FAIL, Kind.OPEN);
            kinds.removeIf(kind -> examples.stream().anyMatch(example -> example.expects(rule, kind)));
            if (!kinds.isEmpty()) {
                without.put(rule, kinds);
            }
        }
        return without;
    }

    /**
     * {@return the design of an example, read as a file is}
     *
     * @throws IllegalArgumentException if a change leads nowhere or changes nothing
     */
    public Reading read(Example example) throws IOException {
        return ChangedDesign.of(example).reading();
    }

    /**
     * {@return what comes of checking an example; the same design is checked once}
     *
     * @throws IllegalArgumentException as {@link #read}
     */
    public Report check(Example example) throws IOException {
        return check(read(example));
    }

    private Report check(Reading reading) {
        return reports.computeIfAbsent(List.of(reading.source(), reading.text()), same -> checker.check(reading));
    }

    /** {@return every difference between what is found in an example and what it expects; empty if there is none} */
    public List<String> differences(Example example) throws IOException {
        ChangedDesign design;
        try {
            design = ChangedDesign.of(example);
        } catch (IllegalArgumentException e) {
            return List.of(String.valueOf(e.getMessage()));
        }
        if (!design.problems().isEmpty()) {
            return design.problems();
        }
        Set<String> listed = example.listed().isEmpty() ? run : example.listed();
        List<String> differences = new ArrayList<>();
        listed.stream().filter(rule -> !run.contains(rule)).forEach(rule -> differences.add(rule + " is not run"));
        Report report = check(design.reading());
        List<Told> found = telling.of(report).stream()
                .filter(told -> listed.contains(told.rule()))
                .toList();
        differences.addAll(unsound(report, listed));
        for (Told told : found) {
            if (told.texts().anyMatch(ExampleText::isUnfilled)) {
                differences.add("a placeholder is not filled: " + told.line());
            }
        }
        if (!differences.isEmpty()) {
            return differences;
        }
        Optional<List<Told>> drafted = drafts.draft(example, found);
        if (drafted.isPresent()) {
            Drafts.write(example, drafted.get());
            return List.of("the expectation was drafted: look at every line before you keep it");
        }
        List<Told> expected = example.expected();
        return expected == null ? List.of("there is no expectation") : Differences.of(expected, found);
    }

    /** What makes findings no ground for an expectation. */
    private static List<String> unsound(Report report, Set<String> listed) {
        List<String> told = new ArrayList<>();
        Set<String> silent = new TreeSet<>(listed);
        for (Finding finding : report.findings()) {
            String rule = finding.outcome().rule();
            silent.remove(rule);
            if (listed.contains(rule) && finding.broke()) {
                told.add(rule + " broke at " + finding.outcome().path());
            }
            if (listed.contains(rule) && finding.suppressed() != null) {
                told.add(rule + " is suppressed at " + finding.outcome().path());
            }
        }
        silent.forEach(rule -> told.add(rule + " gave no finding"));
        report.alternatives().forEach(alternative -> told.addAll(unsound(alternative, listed)));
        return told;
    }
}
