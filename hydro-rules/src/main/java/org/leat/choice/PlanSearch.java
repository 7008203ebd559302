package org.leat.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;
import org.leat.check.Edit;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Trial;
import org.leat.check.WayOut;
import org.leat.choice.Overview.GroupedFailure;
import org.leat.choice.Plan.Step;

/**
 * Looks for the least plan. What each change clears alone gives the sets that could do, the smallest first; each is carried
 * out as a whole, solved again and judged by every rule. Where one leaves an error or brings one, the changes that the
 * changed design itself names are tried on top; what turns out not to be needed is taken off again.
 */
final class PlanSearch {

    /** How many changed designs may be solved, beyond those of the changes each alone. */
    static final int BUDGET = 150;

    private static final int SETS_OF_A_SIZE = 5;
    private static final int MOST_STEPS = 9;
    private static final int MOST_REPAIRS = 3;
    private static final int WAYS_OF_A_REPAIR = 4;

    private final CandidateChanges bench;
    private final List<GroupedFailure> errors;
    private final Set<FindingPlace> wanted = new LinkedHashSet<>();
    private final ToLongFunction<Trial> openAfter;
    private final int begun;
    private Attempt best;

    /** Changes carried out together; {@code left} are places of errors, or of what was an error and is undecided now. */
    private record Attempt(List<Step> steps, Trial trial, Set<FindingPlace> left, double watts) {

        static final Comparator<Attempt> BEST_FIRST = Comparator.comparingInt(
                        (Attempt a) -> a.left().size())
                .thenComparingInt(a -> a.steps().size())
                .thenComparing(Comparator.comparingDouble(Attempt::watts).reversed());

        boolean isBetterThan(Attempt other) {
            return BEST_FIRST.compare(this, other) < 0;
        }
    }

    private PlanSearch(CandidateChanges bench, ToLongFunction<Trial> openAfter) {
        this.bench = bench;
        this.openAfter = openAfter;
        this.errors = bench.groups().stream()
                .filter(g -> g.worst().outcome().level() == Level.ERROR)
                .toList();
        errors.forEach(e -> wanted.add(FindingPlace.of(e.worst().outcome())));
        this.begun = bench.trial().solved();
        this.best = new Attempt(List.of(), bench.trial(), wanted, watts(bench.trial()));
    }

    /**
     * {@return the least plan}
     *
     * @param openAfter counts what is open and can hurt someone in a changed design
     */
    static Plan find(CandidateChanges bench, ToLongFunction<Trial> openAfter) {
        return new PlanSearch(bench, openAfter).find();
    }

    private Plan find() {
        if (wanted.isEmpty()) {
            return plan(Plan.Result.NOTHING_NEEDED);
        }
        Set<FindingPlace> coverable = new LinkedHashSet<>(wanted);
        coverable.removeIf(p -> helping(p).isEmpty());
        consider(new Attempt(List.of(), bench.trial(), wanted, watts(bench.trial())));
        boolean covered = false;
        for (int size = 1; size <= MOST_STEPS && size < stepsToBeat() && !covered; size++) {
            for (List<CandidateChange> set :
                    SetCovers.of(helpingAny(coverable), bench::goTogether, coverable, size, SETS_OF_A_SIZE)) {
                covered = true;
                trySet(set);
            }
            // a larger set is of use only where no set of this size leaves what can be cleared clear
            covered &= wanted.containsAll(best.left()) && best.left().stream().noneMatch(coverable::contains);
        }
        if (best.left().stream().anyMatch(coverable::contains)) {
            trySet(greedy(coverable));
        }
        return plan(
                best.left().isEmpty()
                        ? Plan.Result.FOUND
                        : usedUp() ? Plan.Result.NOT_WITHIN_BUDGET : Plan.Result.SOME_STAY);
    }

    /** A set with as many changes cannot be better than the best but by watts, and all of its size were tried. */
    private int stepsToBeat() {
        return best.left().isEmpty() ? best.steps().size() : Integer.MAX_VALUE;
    }

    private List<CandidateChange> helping(FindingPlace place) {
        return bench.candidates().stream()
                .filter(c -> c.calms().contains(place))
                .toList();
    }

    private List<CandidateChange> helpingAny(Set<FindingPlace> places) {
        return bench.candidates().stream().filter(c -> c.calmedOf(places) > 0).toList();
    }

    private List<CandidateChange> greedy(Set<FindingPlace> coverable) {
        List<CandidateChange> chosen = new ArrayList<>();
        Set<FindingPlace> uncovered = new LinkedHashSet<>(coverable);
        while (!uncovered.isEmpty()) {
            CandidateChange most = bench.candidates().stream()
                    .filter(c -> chosen.stream().allMatch(o -> bench.goTogether(c, o)))
                    .filter(c -> c.calmedOf(uncovered) > 0)
                    .max(Comparator.comparing((CandidateChange c) -> !c.bringsError())
                            .thenComparingLong(c -> c.calmedOf(uncovered))
                            .thenComparingDouble(c -> c.gain().orElse(0)))
                    .orElse(null);
            if (most == null) {
                break;
            }
            chosen.add(most);
            uncovered.removeAll(most.calms());
        }
        return chosen;
    }

    private void trySet(List<CandidateChange> set) {
        Attempt attempt = attempt(set.stream().map(CandidateChange::step).toList());
        if (attempt != null) {
            consider(attempt);
        }
    }

    private void consider(Attempt first) {
        Attempt attempt = pruned(repaired(first));
        if (wanted.containsAll(attempt.left()) && attempt.isBetterThan(best)) {
            best = attempt;
        }
    }

    private @Nullable Attempt attempt(List<Step> steps) {
        if (usedUp()) {
            return null;
        }
        List<Edit> edits = new ArrayList<>();
        steps.forEach(s -> edits.addAll(s.way().edits()));
        Trial changed = bench.changed(edits);
        if (changed == null) {
            return null;
        }
        Set<FindingPlace> left = new LinkedHashSet<>();
        bench.errors(changed).forEach(e -> left.add(FindingPlace.of(e)));
        DesignState after = DesignState.of(changed.outcomes());
        wanted.stream().filter(p -> after.isMoreUndecided(p, bench.before())).forEach(left::add);
        return new Attempt(List.copyOf(steps), changed, left, watts(changed));
    }

    private static double watts(Trial trial) {
        return trial.batteryPower().orElse(Double.NEGATIVE_INFINITY);
    }

    private Attempt repaired(Attempt first) {
        Attempt attempt = first;
        Set<FindingPlace> hopeless = new HashSet<>();
        for (int repairs = 0; repairs < MOST_REPAIRS && !usedUp(); ) {
            Outcome.Fail failure = firstLeft(attempt, hopeless);
            if (failure == null) {
                break;
            }
            Attempt better = repairedOf(attempt, failure);
            if (better == null) {
                hopeless.add(FindingPlace.of(failure));
            } else {
                attempt = better;
                repairs++;
            }
        }
        return attempt;
    }

    private Outcome.@Nullable Fail firstLeft(Attempt attempt, Set<FindingPlace> hopeless) {
        return bench.errors(attempt.trial()).stream()
                .filter(f -> !hopeless.contains(FindingPlace.of(f)))
                .findFirst()
                .orElse(null);
    }

    private @Nullable Attempt repairedOf(Attempt attempt, Outcome.Fail failure) {
        Attempt better = null;
        List<WayOut> ways = attempt.trial().changesAgainst(failure);
        for (WayOut found : ways.subList(0, Math.min(WAYS_OF_A_REPAIR, ways.size()))) {
            WayOut way = found.with(
                    bench.added().ofBase(found.edits(), attempt.trial().design()));
            List<Step> steps = new ArrayList<>(attempt.steps());
            // a field has one value: a change that says it anew stands in place of the one before
            steps.removeIf(s -> !bench.added().goTogether(s.way().edits(), way.edits()));
            steps.add(new Step(way, failure));
            Attempt more = attempt(steps);
            if (more != null
                    && !(bench.isAnsweredForLess(FindingPlace.of(failure)) && bench.losesMost(bench.gain(more.trial())))
                    && more.left().size() < attempt.left().size()
                    && (better == null || more.isBetterThan(better))) {
                better = more;
            }
        }
        return better;
    }

    /** Without each change that nothing is the worse for leaving out, the latest first. */
    private Attempt pruned(Attempt full) {
        Attempt attempt = full;
        for (int i = full.steps().size() - 1; i >= 0 && attempt.steps().size() > 1; i--) {
            List<Step> fewer = new ArrayList<>(attempt.steps());
            fewer.remove(i);
            Attempt without = attempt(fewer);
            if (without != null && attempt.left().containsAll(without.left())) {
                attempt = without;
            }
        }
        return attempt;
    }

    private boolean usedUp() {
        return tried() >= BUDGET;
    }

    private int tried() {
        return bench.trial().solved() - begun;
    }

    private Plan plan(Plan.Result result) {
        List<Plan.Staying> stays = errors.stream()
                .filter(e -> best.left().contains(FindingPlace.of(e.worst().outcome())))
                .map(e -> new Plan.Staying(e, why(e)))
                .toList();
        OptionalDouble power = best.trial().batteryPower();
        return new Plan(
                result,
                oneAfterTheOther(best.steps()),
                stays,
                openAfter.applyAsLong(best.trial()),
                power,
                tried(),
                BUDGET);
    }

    /** As the steps are carried out in their order, each on the design that those before it have left. */
    private List<Step> oneAfterTheOther(List<Step> steps) {
        List<Edit> before = new ArrayList<>();
        List<Step> told = new ArrayList<>();
        for (Step step : steps) {
            WayOut way = step.way();
            told.add(new Step(way.with(bench.added().after(before, way.edits())), step.of()));
            before.addAll(way.edits());
        }
        return told;
    }

    private Plan.Why why(GroupedFailure error) {
        if (error.onlyForSome()) {
            return Plan.Why.ONLY_FOR_SOME;
        }
        List<CandidateChange> helping = helping(FindingPlace.of(error.worst().outcome()));
        if (!helping.isEmpty()) {
            return helping.stream().allMatch(CandidateChange::bringsError)
                    ? Plan.Why.BRINGS_ANOTHER
                    : Plan.Why.AGAINST_OTHERS;
        }
        if (error.waysForAll().stream().anyMatch(way -> !way.edits().isEmpty())) {
            return Plan.Why.LOSES_MOST;
        }
        if (!error.worst().rejected().isEmpty()) {
            return Plan.Why.BRINGS_ANOTHER;
        }
        return error.waysForAll().isEmpty() ? Plan.Why.NO_WAY_OUT : Plan.Why.ADVICE_ONLY;
    }
}
