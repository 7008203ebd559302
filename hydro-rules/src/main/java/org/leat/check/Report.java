package org.leat.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Baseline.AbsentFinding;
import org.leat.check.Suppression.IdleSuppression;
import org.leat.design.RegulatorKind;
import org.leat.file.Problem;
import org.leat.plant.cases.BusSituations;
import org.leat.plant.cases.PressureProfile;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.Amount;

/**
 * What came of checking one design. Made by a {@link Checker}. Immutable; two reports that say the same are equal.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Report {

    /**
     * What was checked.
     *
     * @param file the design file as it was given, or a name for a design built in code
     * @param design what the plant is called; "" if the file could not be read as a design
     * @param alternative which of the design's alternatives this is; "" for the design itself
     */
    public record Subject(String file, String design, String alternative) {}

    /**
     * What was found out by solving the plant.
     *
     * @param assumptions what the plant had to assume
     * @param unsolved why the plant could not be solved; empty if it could
     * @param running the plant on each nozzle set, the set open as built first
     * @param profile pressures along the pipe with the nozzles as built; without points if the plant could not be solved
     * @param regulator what kind of charge regulator the plant has
     * @param bus what each situation makes of the bus, solved when first looked at
     */
    public record SolvedPlant(
            List<AssumedValue> assumptions,
            List<Amount.Unknown> unsolved,
            List<Running> running,
            PressureProfile profile,
            RegulatorKind regulator,
            BusSituations bus) {

        /** Nothing was solved. */
        public static final SolvedPlant NOTHING = new SolvedPlant(
                List.of(), List.of(), List.of(), PressureProfile.NONE, RegulatorKind.NONE, BusSituations.NONE);

        public SolvedPlant {
            assumptions = List.copyOf(assumptions);
            unsolved = List.copyOf(unsolved);
            running = List.copyOf(running);
        }
    }

    /** What suppressions and a baseline make of it. */
    private record Acceptance(
            List<IdleSuppression> idle,
            List<AbsentFinding> absent,
            @Nullable LocalDate day) {
        static final Acceptance NONE = new Acceptance(List.of(), List.of(), null);

        Acceptance {
            idle = List.copyOf(idle);
            absent = List.copyOf(absent);
        }
    }

    private final Subject subject;
    private final List<Problem> problems;
    private final List<Finding> findings;
    private final SolvedPlant solved;
    private final List<Report> alternatives;
    private final Acceptance acceptance;

    private Report(
            Subject subject,
            List<Problem> problems,
            List<Finding> findings,
            SolvedPlant solved,
            List<Report> alternatives,
            Acceptance acceptance) {
        this.subject = subject;
        this.problems = List.copyOf(problems);
        this.findings = List.copyOf(findings);
        this.solved = solved;
        this.alternatives = List.copyOf(alternatives);
        this.acceptance = acceptance;
    }

    /**
     * {@return a report put together from its parts} For tools that merge reports, and for tests of writers.
     *
     * @param findings every outcome, by file, line, column, rule, element, case
     * @param alternatives the design's alternatives, each checked as a design of its own
     */
    public static Report of(Subject subject, List<Finding> findings, SolvedPlant solved, List<Report> alternatives) {
        return new Report(subject, List.of(), findings, solved, alternatives, Acceptance.NONE);
    }

    /** {@return what comes of a file that could not be read} */
    public static Report unreadable(String file, List<Problem> problems) {
        return new Report(
                new Subject(file, "", ""), problems, List.of(), SolvedPlant.NOTHING, List.of(), Acceptance.NONE);
    }

    /** {@return the same, with what is accepted set against it} */
    Report accepted(
            List<Finding> same, List<IdleSuppression> idle, List<AbsentFinding> absent, @Nullable LocalDate day) {
        return new Report(subject, problems, same, solved, alternatives, new Acceptance(idle, absent, day));
    }

    /** {@return the design file as it was given, or a name for a design built in code} */
    public String file() {
        return subject.file();
    }

    /** {@return what the plant is called; "" if the file could not be read as a design} */
    public String design() {
        return subject.design();
    }

    /** {@return which of the design's alternatives this is; "" for the design itself} */
    public String alternative() {
        return subject.alternative();
    }

    /** {@return why the file could not be read; empty if it could} */
    public List<Problem> problems() {
        return problems;
    }

    /** {@return every outcome, by file, line, column, rule, element, case} */
    public List<Finding> findings() {
        return findings;
    }

    /** {@return what the plant had to assume} */
    public List<AssumedValue> assumptions() {
        return solved.assumptions();
    }

    /** {@return why the plant could not be solved; empty if it could} */
    public List<Amount.Unknown> unsolved() {
        return solved.unsolved();
    }

    /** {@return the plant on each nozzle set, the set open as built first} */
    public List<Running> running() {
        return solved.running();
    }

    /** {@return pressures along the pipe with the nozzles as built; without points if the plant could not be solved} */
    public PressureProfile profile() {
        return solved.profile();
    }

    /** {@return what kind of charge regulator the plant has} */
    public RegulatorKind regulator() {
        return solved.regulator();
    }

    /** {@return what each situation makes of the bus, solved when first looked at} */
    public BusSituations bus() {
        return solved.bus();
    }

    /** {@return the design's alternatives, each checked as a design of its own} */
    public List<Report> alternatives() {
        return alternatives;
    }

    /** {@return suppressions that suppress nothing here} */
    public List<IdleSuppression> idle() {
        return acceptance.idle();
    }

    /** {@return what the baseline knows of this design and is found no more} */
    public List<AbsentFinding> absent() {
        return acceptance.absent();
    }

    /**
     * {@return the day with which the last days of suppressions were compared; null if none has one, or nobody said which
     * day it is}
     */
    public @Nullable LocalDate day() {
        return acceptance.day();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Report that
                && subject.equals(that.subject)
                && problems.equals(that.problems)
                && findings.equals(that.findings)
                && solved.equals(that.solved)
                && alternatives.equals(that.alternatives)
                && acceptance.equals(that.acceptance);
    }

    @Override
    public int hashCode() {
        return Objects.hash(subject, problems, findings, solved, alternatives, acceptance);
    }

    @Override
    public String toString() {
        return subject + " " + findings;
    }

    /** {@return whether the file could be read as a design} */
    public boolean readable() {
        return problems.isEmpty();
    }

    /** {@return findings of a kind that count, worst first} */
    public List<Finding> worstFirst(Kind kind) {
        return worstFirst(f -> f.outcome().kind() == kind && f.counts());
    }

    /** {@return findings that somebody suppresses, worst first} */
    public List<Finding> suppressed() {
        return worstFirst(f -> f.suppressed() != null);
    }

    /** {@return findings that the baseline knows and nobody suppresses, worst first; passes and the like are none} */
    public List<Finding> known() {
        return worstFirst(
                f -> f.known() && f.suppressed() == null && f.outcome().kind().needsAttention());
    }

    /** {@return findings that can hurt someone and do not count, worst first: to be shown before all else} */
    public List<Finding> endangeringUncounted() {
        return worstFirst(f -> f.endangers() && !f.counts());
    }

    /** {@return what was written and cannot be meant, worst first, also where it does not count: the rest is judged on it} */
    public List<Finding> judgedOn() {
        return worstFirst(f -> f.doubtsInput() && f.outcome().level() == Level.ERROR);
    }

    /** {@return failures of what was written that count, odd or worse: what rests on them is not judged by that} */
    public List<Finding> doubted() {
        return worstFirst(f -> f.doubtsInput() && f.failsAt(Level.WARNING));
    }

    private List<Finding> worstFirst(Predicate<Finding> which) {
        return findings.stream().filter(which).sorted(Finding.WORST_FIRST).toList();
    }

    /** {@return how many findings are of that kind and count} */
    public long count(Kind kind) {
        return findings.stream()
                .filter(f -> f.outcome().kind() == kind && f.counts())
                .count();
    }

    /** {@return how many failures are of exactly that level and count} */
    public long failures(Level level) {
        return findings.stream()
                .filter(f -> f.outcome().kind() == Kind.FAIL && f.outcome().level() == level && f.counts())
                .count();
    }

    /** {@return whether a rule broke, here or in an alternative} */
    public boolean broke() {
        return findings.stream().anyMatch(Finding::broke)
                || alternatives.stream().anyMatch(Report::broke);
    }
}
