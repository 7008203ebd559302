package org.leat.choice;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.leat.check.Examined;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.check.RuleInForce;
import org.leat.check.Rulebook;
import org.leat.check.Trial;
import org.leat.choice.Overview.Yield;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.OperatingPoint;

/** Makes overviews. Costs a few dozen solutions of the plant: to be asked for where someone reads it. */
final class Overviews {

    private static final double SECONDS_PER_DAY = 24 * 3600;

    private Overviews() {}

    /**
     * {@return a design at a glance}
     *
     * @param rulebook of the checker that examined it
     */
    static Overview of(Examined examined, Rulebook rulebook) {
        Report report = examined.report();
        Trial trial = examined.trial();
        SafetyVerdict verdict = verdict(report, rulebook);
        if (trial == null) {
            Plan none = new Plan(Plan.Result.NOTHING_JUDGED, List.of(), List.of(), 0, OptionalDouble.empty(), 0, 0);
            return new Overview(verdict, List.of(), List.of(), List.of(), List.of(), none);
        }
        List<Finding> failures = report.worstFirst(Kind.FAIL);
        Set<FindingPlace> counted =
                failures.stream().map(f -> FindingPlace.of(f.outcome())).collect(Collectors.toSet());
        Set<FindingPlace> uncounted = report.findings().stream()
                .filter(f -> !f.counts())
                .map(f -> FindingPlace.of(f.outcome()))
                .filter(p -> !counted.contains(p))
                .collect(Collectors.toSet());
        CandidateChanges bench = new CandidateChanges(trial, failures, uncounted);
        Plan plan = PlanSearch.find(bench, changed -> open(changed, rulebook));
        return new Overview(
                verdict,
                report.running().stream().map(Overviews::given).toList(),
                Causes.of(bench, plan),
                MissingInputs.of(report, trial.design()),
                UnderstoodNumbers.of(trial.plant()),
                plan);
    }

    /**
     * {@return whether a design is safe to open, as far as it was judged}
     *
     * @param rulebook of the checker that examined it
     */
    static SafetyVerdict verdict(Report report, Rulebook rulebook) {
        long openEndangering =
                report.worstFirst(Kind.OPEN).stream().filter(Finding::endangers).count();
        long setAside = report.endangeringUncounted().size();
        long playedDown =
                rulebook.rules().stream().filter(RuleInForce::playsDownDanger).count();
        long warningsEndangering = report.worstFirst(Kind.FAIL).stream()
                .map(Finding::outcome)
                .filter(o -> rulebook.rule(o.rule()).warnsOfDanger(o.level()))
                .count();
        long doubted = report.doubted().size();
        return new SafetyVerdict(
                answer(report, warningsEndangering > 0, openEndangering + setAside + doubted + playedDown > 0),
                report.failures(Level.ERROR),
                report.failures(Level.WARNING),
                warningsEndangering,
                report.failures(Level.NOTE),
                openEndangering,
                report.count(Kind.OPEN),
                report.count(Kind.REVIEW),
                setAside,
                doubted,
                playedDown);
    }

    private static SafetyVerdict.Answer answer(Report report, boolean warned, boolean unjudged) {
        if (!report.readable()) {
            return SafetyVerdict.Answer.UNREADABLE;
        }
        if (report.failures(Level.ERROR) > 0) {
            return SafetyVerdict.Answer.UNSAFE;
        }
        if (!report.unsolved().isEmpty() || report.broke()) {
            return SafetyVerdict.Answer.UNSOLVED;
        }
        if (warned) {
            return SafetyVerdict.Answer.WARNED;
        }
        if (unjudged) {
            return SafetyVerdict.Answer.UNJUDGED;
        }
        return report.count(Kind.REVIEW) > 0 ? SafetyVerdict.Answer.LOOK : SafetyVerdict.Answer.JUDGED;
    }

    private static Yield given(Running running) {
        OperatingPoint o = running.operatingPoint();
        return new Yield(
                running.nozzles().name(),
                running.nozzles().asBuilt(),
                running.water().fullPipe(),
                o.hold(),
                o.batteryPower(),
                o.batteryPower() * SECONDS_PER_DAY,
                o.batteryPower() / o.bus().battery(),
                o.bus().battery());
    }

    private static long open(Trial changed, Rulebook rulebook) {
        return changed.outcomes().stream()
                .filter(o -> o.kind() == Kind.OPEN)
                .filter(o -> hurts(o, rulebook))
                .count();
    }

    private static boolean hurts(Outcome outcome, Rulebook rulebook) {
        return rulebook.rule(outcome.rule()).hurts(outcome.level());
    }
}
