package org.leat.check.testing;

import java.util.ArrayList;
import java.util.List;
import org.apiguardian.api.API;
import org.leat.check.Checker;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.check.Rule;
import org.leat.check.RulePack;
import org.leat.check.WayOut.RejectedChange;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.file.ProblemText;
import org.leat.file.Reading;

/**
 * A rule and a design to try it on: each example is one line.
 *
 * <pre>
 * RuleExamples rule = RuleExamples.of(new HillPack(), "hill/standing-pressure", design);
 * rule.passes();
 * rule.with("gross-head: 24 m", "gross-head: 70 m").fails();
 * rule.with("gross-head: 24 m", "").open("/site/gross-head");
 * </pre>
 *
 * <p>Each line also holds what is said: a sentence has every placeholder filled, a failure names its value, its limit
 * and the source of the limit, and every way out that the rule offers takes the failure away when it is carried out.
 *
 * <p>Nothing passes unless it was run: a design that cannot be read, a plant that cannot be solved where something should
 * pass or fail, a rule that breaks or says nothing, and a finding that the design itself suppresses are refused. What is
 * not so throws an {@link AssertionError}, so that any test framework will do. Immutable.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class RuleExamples {

    private final Checker checker;
    private final Rule rule;
    private final String design;

    private RuleExamples(Checker checker, Rule rule, String design) {
        this.checker = checker;
        this.rule = rule;
        this.design = design;
    }

    /**
     * {@return a rule of a pack and a design to begin with}
     *
     * @param design the text of a design file
     * @throws IllegalArgumentException if the pack has no such rule
     */
    public static RuleExamples of(RulePack pack, String ruleId, String design) {
        Rule rule = pack.rules().stream()
                .filter(r -> r.id().equals(ruleId))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no rule is called " + ruleId));
        return new RuleExamples(Checker.of(List.of(pack)), rule, design);
    }

    /**
     * {@return the same rule and the design with one place of its text changed}
     *
     * @throws IllegalArgumentException unless {@code from} stands in it exactly once and {@code to} is something else
     */
    public RuleExamples with(String from, String to) {
        int at = design.indexOf(from);
        if (from.isEmpty() || at < 0 || design.indexOf(from, at + 1) >= 0) {
            throw new IllegalArgumentException("must stand in the design exactly once: " + from);
        }
        if (from.equals(to)) {
            throw new IllegalArgumentException("changes nothing: " + from);
        }
        return new RuleExamples(checker, rule, design.substring(0, at) + to + design.substring(at + from.length()));
    }

    /** {@return what the rule says, having judged a plant that was solved, and passed all that it judged} */
    public List<String> passes() {
        List<Finding> findings = found(solved());
        claim(findings.stream().allMatch(f -> f.outcome().kind() == Kind.PASS), "should pass", findings);
        return sentences(findings, Kind.PASS);
    }

    /** {@return what the rule says of what fails in a plant that was solved} At least one thing must. */
    public List<String> fails() {
        List<Finding> findings = found(solved());
        claim(has(findings, Kind.FAIL), "should fail", findings);
        for (Finding finding : findings) {
            if (finding.outcome().kind() == Kind.FAIL) {
                ExampleText.namesValueLimitAndSource(checker.rulebook(), finding);
                waysOutHold(finding);
            }
        }
        return sentences(findings, Kind.FAIL);
    }

    /**
     * {@return what the rule says where it cannot judge} It may pass other things, but nothing may fail.
     *
     * @param missing path of the field that the rule must name as missing
     */
    public List<String> open(String missing) {
        List<Finding> findings = found(check());
        claim(
                findings.stream()
                        .anyMatch(f -> f.outcome().kind() == Kind.OPEN
                                && missing.equals(f.outcome().missing())),
                "should be open for want of " + missing,
                findings);
        claim(!has(findings, Kind.FAIL), "should be open and fail nothing", findings);
        return sentences(findings, Kind.OPEN);
    }

    /** {@return what the rule says where the design has nothing for it to judge} */
    public List<String> doesNotApply() {
        List<Finding> findings = found(solved());
        claim(
                findings.stream().allMatch(f -> f.outcome().kind() == Kind.NOT_APPLICABLE),
                "should have nothing to judge",
                findings);
        return sentences(findings, Kind.NOT_APPLICABLE);
    }

    private Design read() {
        Reading reading = DesignReader.read(design, "example");
        Design read = reading.design();
        if (read == null) {
            throw new AssertionError("the example is no design: "
                    + reading.problems().stream().map(ProblemText::line).toList());
        }
        if (!read.alternatives().isEmpty()) {
            throw new AssertionError("the example has alternatives: make each an example of its own");
        }
        return read;
    }

    private Report check() {
        return checker.check(read());
    }

    /** Of a plant that cannot be solved every rule is open: nothing passes or fails there for a reason of its own. */
    private Report solved() {
        Report report = check();
        if (!report.unsolved().isEmpty()) {
            throw new AssertionError("the plant of the example cannot be solved: " + report.unsolved());
        }
        return report;
    }

    private List<Finding> found(Report report) {
        List<Finding> findings = report.findings().stream()
                .filter(f -> f.outcome().rule().equals(rule.id()))
                .toList();
        claim(!findings.isEmpty(), "should say something", findings);
        claim(findings.stream().noneMatch(Finding::broke), "should not break", findings);
        claim(findings.stream().allMatch(f -> f.suppressed() == null), "should not be suppressed", findings);
        findings.forEach(f -> ExampleText.isWhole(checker.rulebook(), f));
        return findings;
    }

    /** The checker carried each out, and keeps apart those that take the failure away and bring another as bad. */
    private void waysOutHold(Finding finding) {
        for (RejectedChange tried : finding.rejected()) {
            throw new AssertionError(rule.id() + " offers a way out that does not help: "
                    + tried.way().message() + " makes " + tried.brings() + " fail");
        }
    }

    private List<String> sentences(List<Finding> findings, Kind kind) {
        List<String> said = new ArrayList<>();
        for (Finding finding : findings) {
            if (finding.outcome().kind() == kind) {
                said.add(ExampleText.sentence(checker.rulebook(), finding));
            }
        }
        return List.copyOf(said);
    }

    private static boolean has(List<Finding> findings, Kind kind) {
        return findings.stream().anyMatch(f -> f.outcome().kind() == kind);
    }

    private void claim(boolean so, String should, List<Finding> findings) {
        if (!so) {
            StringBuilder told = new StringBuilder(rule.id() + " " + should + " but found:");
            for (Finding finding : findings) {
                Outcome outcome = finding.outcome();
                told.append("\n  ").append(outcome.kind().word()).append(" at ").append(outcome.path());
                told.append(": ").append(ExampleText.sentence(checker.rulebook(), finding));
            }
            throw new AssertionError(told.toString());
        }
    }
}
