package org.leat.check;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.leat.design.RegulatorKind;
import org.leat.file.Problem;
import org.leat.plant.cases.BusSituations;
import org.leat.plant.cases.PressureProfile;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.Amount;

/**
 * What came of checking one design.
 *
 * @param file the design file as it was given, or a name for a design built in code
 * @param design what the plant is called; "" if the file could not be read as a design
 * @param alternative which of the design's alternatives this is; "" for the design itself
 * @param problems why the file could not be read; empty if it could
 * @param findings every outcome, by file, line, column, rule, element, case
 * @param assumptions what the plant had to assume
 * @param unsolved why the plant could not be solved; empty if it could
 * @param running the plant on each nozzle set, the set open as built first
 * @param profile pressures along the pipe with the nozzles as built; without points if the plant could not be solved
 * @param regulator what kind of charge regulator the plant has
 * @param bus what each situation makes of the bus, solved when first looked at
 * @param alternatives the design's alternatives, each checked as a design of its own
 * @param idle suppressions that suppress nothing here
 * @param absent what the baseline knows of this design and is found no more
 * @param day with which the last days of suppressions were compared; null if none has one, or nobody said which day it is
 */
public record Report(
        String file,
        String design,
        String alternative,
        List<Problem> problems,
        List<Finding> findings,
        List<AssumedValue> assumptions,
        List<Amount.Unknown> unsolved,
        List<Running> running,
        PressureProfile profile,
        RegulatorKind regulator,
        BusSituations bus,
        List<Report> alternatives,
        List<IdleSuppression> idle,
        List<AbsentFinding> absent,
        @Nullable LocalDate day) {

    public Report {
        problems = List.copyOf(problems);
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
        unsolved = List.copyOf(unsolved);
        running = List.copyOf(running);
        alternatives = List.copyOf(alternatives);
        idle = List.copyOf(idle);
        absent = List.copyOf(absent);
    }

    /** Makes a report without suppressions and baseline. */
    public Report(
            String file,
            String design,
            String alternative,
            List<Problem> problems,
            List<Finding> findings,
            List<AssumedValue> assumptions,
            List<Amount.Unknown> unsolved,
            List<Running> running,
            PressureProfile profile,
            RegulatorKind regulator,
            BusSituations bus,
            List<Report> alternatives) {
        this(
                file,
                design,
                alternative,
                problems,
                findings,
                assumptions,
                unsolved,
                running,
                profile,
                regulator,
                bus,
                alternatives,
                List.of(),
                List.of(),
                null);
    }

    /** {@return what comes of a file that could not be read} */
    public static Report unreadable(String file, List<Problem> problems) {
        return new Report(
                file,
                "",
                "",
                problems,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                PressureProfile.NONE,
                RegulatorKind.NONE,
                BusSituations.NONE,
                List.of());
    }

    /** {@return the same, with what is accepted set against it} */
    Report accepted(
            List<Finding> same,
            List<IdleSuppression> idleOnes,
            List<AbsentFinding> absentOnes,
            @Nullable LocalDate on) {
        return new Report(
                file,
                design,
                alternative,
                problems,
                same,
                assumptions,
                unsolved,
                running,
                profile,
                regulator,
                bus,
                alternatives,
                idleOnes,
                absentOnes,
                on);
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
