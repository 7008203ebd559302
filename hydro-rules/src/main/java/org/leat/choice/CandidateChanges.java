package org.leat.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leat.check.Edit;
import org.leat.check.Failures;
import org.leat.check.Finding;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Trial;
import org.leat.check.WayOut;
import org.leat.check.WayOut.RejectedChange;
import org.leat.choice.Overview.GroupedFailure;
import org.leat.choice.Plan.Step;

/** The design as it stands and every change that its failures name, each tried alone. */
final class CandidateChanges {

    /** Of the battery's power: what loses more is the last thing to do, not the first. */
    private static final double MOST = 0.5;

    private final Trial trial;
    private final AddedItems added;
    private final List<GroupedFailure> groups;
    private final DesignState before;
    private final Failures failingBefore;
    private final Set<FindingPlace> uncounted;
    private final List<CandidateChange> candidates = new ArrayList<>();
    private final Set<FindingPlace> answeredForLess = new LinkedHashSet<>();

    /**
     * Tries every change.
     *
     * @param failures that count, worst first
     * @param uncounted places whose failures do not count
     */
    CandidateChanges(Trial trial, List<Finding> failures, Set<FindingPlace> uncounted) {
        this.trial = trial;
        this.added = new AddedItems(trial.design());
        List<Outcome> outcomes = trial.outcomes();
        this.before = DesignState.of(outcomes);
        this.failingBefore = Failures.of(outcomes);
        this.uncounted = uncounted;
        Map<FindingPlace, List<Finding>> grouped = new LinkedHashMap<>();
        for (Finding failure : failures) {
            grouped.computeIfAbsent(FindingPlace.of(failure.outcome()), p -> new ArrayList<>())
                    .add(failure);
        }
        for (Step step : steps(failures)) {
            CandidateChange candidate = candidate(step, grouped.keySet());
            if (candidate != null) {
                candidates.add(candidate);
            }
        }
        this.groups = grouped.values().stream().map(this::group).toList();
        groups.stream()
                .filter(this::hasAnswerForLess)
                .forEach(g -> answeredForLess.add(FindingPlace.of(g.worst().outcome())));
        candidates.replaceAll(c -> losesMost(c.gain()) ? c.notAgainst(answeredForLess) : c);
    }

    /** {@return whether advice is known against a failure, or a change that leaves most of the power and brings nothing as bad} */
    private boolean hasAnswerForLess(GroupedFailure group) {
        Outcome worst = group.worst().outcome();
        return group.waysForAll().stream().anyMatch(way -> way.edits().isEmpty())
                || candidates.stream()
                        .anyMatch(c -> c.clears().contains(FindingPlace.of(worst))
                                && c.isFairFor(worst.level())
                                && !losesMost(c.gain()));
    }

    /** {@return whether a change costs more than half of what the plant as designed gives the battery} */
    boolean losesMost(OptionalDouble gain) {
        OptionalDouble was = trial.batteryPower();
        return was.isPresent() && gain.isPresent() && gain.getAsDouble() < -was.getAsDouble() * MOST;
    }

    /** {@return whether a failure is answered without losing most of the power, so that what loses it is not used} */
    boolean isAnsweredForLess(FindingPlace place) {
        return answeredForLess.contains(place);
    }

    /** Each change once, that of the worst failure first. */
    private static List<Step> steps(List<Finding> failures) {
        Map<List<Edit>, Step> steps = new LinkedHashMap<>();
        for (Finding failure : failures) {
            List<WayOut> ways = new ArrayList<>(failure.waysOut());
            failure.rejected().stream().map(RejectedChange::way).forEach(ways::add);
            for (WayOut way : ways) {
                if (!way.edits().isEmpty()) {
                    steps.putIfAbsent(way.edits(), new Step(way, failure.outcome()));
                }
            }
        }
        return List.copyOf(steps.values());
    }

    private @Nullable CandidateChange candidate(Step step, Set<FindingPlace> places) {
        Trial changed = changed(step.way().edits());
        if (changed == null) {
            return null;
        }
        List<Outcome> outcomes = changed.outcomes();
        DesignState after = DesignState.of(outcomes);
        Set<FindingPlace> clears = new LinkedHashSet<>();
        Set<FindingPlace> calms = new LinkedHashSet<>();
        for (FindingPlace place : places) {
            if (after.isCalm(place, before)) {
                calms.add(place);
            }
            if (after.isClear(place, before)) {
                clears.add(place);
            }
        }
        Level brings = null;
        Failures failing = Failures.of(outcomes);
        for (Level level : Level.values()) {
            if (failing.worseThan(failingBefore, level).isPresent()) {
                brings = level;
            }
        }
        return new CandidateChange(step, clears, calms, brings, gain(changed));
    }

    private GroupedFailure group(List<Finding> members) {
        Finding worst = members.get(0);
        FindingPlace place = FindingPlace.of(worst.outcome());
        Map<List<Edit>, WayOut> ways = new LinkedHashMap<>();
        List<WayOut> advice = new ArrayList<>();
        for (Finding member : members) {
            for (WayOut way : member.waysOut()) {
                if (!way.edits().isEmpty()) {
                    ways.putIfAbsent(way.edits(), way);
                } else if (!advice.contains(way)) {
                    advice.add(way);
                }
            }
        }
        boolean any = !ways.isEmpty();
        List<WayOut> forAll = new ArrayList<>();
        for (CandidateChange candidate : candidates) {
            WayOut own = ways.get(candidate.edits());
            if (own != null && candidate.clears().contains(place)) {
                forAll.add(own);
            }
        }
        boolean onlyForSome = any && forAll.isEmpty();
        forAll.addAll(advice);
        return new GroupedFailure(worst, members.subList(1, members.size()), forAll, onlyForSome);
    }

    /** {@return the design with changes carried out; null where it can never be} */
    @Nullable
    Trial changed(List<Edit> edits) {
        try {
            return trial.with(added.together(edits));
        } catch (IllegalArgumentException e) {
            return null; // the changes do not go together, or the design so changed can never be
        }
    }

    /** {@return what changes add to lists of the design} */
    AddedItems added() {
        return added;
    }

    /** {@return whether both changes can be carried out} */
    boolean goTogether(CandidateChange one, CandidateChange other) {
        return added.goTogether(one.edits(), other.edits());
    }

    OptionalDouble gain(Trial changed) {
        OptionalDouble was = trial.batteryPower();
        OptionalDouble is = changed.batteryPower();
        return was.isEmpty() || is.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(is.getAsDouble() - was.getAsDouble());
    }

    Trial trial() {
        return trial;
    }

    DesignState before() {
        return before;
    }

    /** {@return failures that count, by rule and element, worst first} */
    List<GroupedFailure> groups() {
        return groups;
    }

    /** {@return every change that can be carried out, that of the worst failure first} */
    List<CandidateChange> candidates() {
        return candidates;
    }

    /** {@return the errors of a changed design that count} */
    List<Outcome.Fail> errors(Trial changed) {
        return DesignState.of(changed.outcomes()).failures(Level.ERROR).stream()
                .filter(f -> !uncounted.contains(FindingPlace.of(f)))
                .toList();
    }
}
