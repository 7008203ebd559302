package org.leat.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leat.check.Edit;
import org.leat.check.Level;
import org.leat.check.WayOut;
import org.leat.choice.Overview.GroupedFailure;
import org.leat.choice.Plan.Step;

/** Puts failures under the changes that clear them together: those of the plan first, then whichever clears most. */
final class Causes {

    private static final Comparator<Cause> WORST_FIRST = Comparator.comparing(Cause::worst, Comparator.reverseOrder())
            .thenComparing(Cause::inPlan, Comparator.reverseOrder())
            .thenComparing(c -> c.count(Level.ERROR), Comparator.reverseOrder());

    private final CandidateChanges bench;
    private final Map<FindingPlace, GroupedFailure> left = new LinkedHashMap<>();
    private final List<Cause> causes = new ArrayList<>();

    private Causes(CandidateChanges bench) {
        this.bench = bench;
        bench.groups().forEach(g -> left.put(FindingPlace.of(g.worst().outcome()), g));
    }

    /** {@return every failure that counts, under what clears it; worst first} */
    static List<Cause> of(CandidateChanges bench, Plan plan) {
        return new Causes(bench).of(plan);
    }

    private List<Cause> of(Plan plan) {
        List<CandidateChange> steps = plan.steps().stream().map(this::candidate).toList();
        Set<FindingPlace> alone = new LinkedHashSet<>();
        steps.forEach(c -> alone.addAll(c.calms()));
        Set<FindingPlace> stays = new LinkedHashSet<>();
        plan.stays().forEach(s -> stays.add(FindingPlace.of(s.failure().worst().outcome())));
        Set<FindingPlace> together =
                new LinkedHashSet<>(); // errors that only several changes of the plan together clear
        left.forEach((place, group) -> {
            if (group.worst().outcome().level() == Level.ERROR && !alone.contains(place) && !stays.contains(place)) {
                together.add(place);
            }
        });
        for (int i = 0; i < steps.size(); i++) {
            Set<FindingPlace> calms = new LinkedHashSet<>(steps.get(i).calms());
            FindingPlace own = FindingPlace.of(steps.get(i).step().of());
            if (together.remove(own)) {
                calms.add(own);
            }
            if (i == steps.size() - 1) {
                calms.addAll(together);
            }
            take(steps.get(i).step(), steps.get(i).clears(), calms, true);
        }
        for (CandidateChange next = most(); next != null; next = most()) {
            take(next.step(), fairly(next), Set.of(), false);
        }
        untried();
        causes.sort(WORST_FIRST);
        return List.copyOf(causes);
    }

    /** What no change tried clears: under the same advice of one rule where there is some, else each alone. */
    private void untried() {
        Map<List<Object>, List<GroupedFailure>> byAdvice = new LinkedHashMap<>();
        for (GroupedFailure group : left.values()) {
            Step advice = advice(group);
            Object key = advice == null
                    ? FindingPlace.of(group.worst().outcome())
                    : advice.way().message();
            byAdvice.computeIfAbsent(List.of(group.worst().outcome().rule(), key), k -> new ArrayList<>())
                    .add(group);
        }
        byAdvice.values().forEach(same -> causes.add(new Cause(advice(same.get(0)), same, List.of(), 0, false)));
    }

    private void take(Step step, Set<FindingPlace> clears, Set<FindingPlace> calms, boolean inPlan) {
        List<GroupedFailure> cleared = new ArrayList<>();
        List<GroupedFailure> calmed = new ArrayList<>();
        int also = 0;
        for (GroupedFailure group : bench.groups()) {
            FindingPlace place = FindingPlace.of(group.worst().outcome());
            boolean clear = clears.contains(place);
            if (clear || (calms.contains(place) && group.count(Level.ERROR) > 0)) {
                if (left.remove(place) == null) {
                    also += group.size();
                } else {
                    (clear ? cleared : calmed).add(group);
                }
            }
        }
        causes.add(new Cause(step, cleared, calmed, also, inPlan));
    }

    /** A change that the plan's search found on the way has no entry of its own: it clears nothing alone. */
    private CandidateChange candidate(Step step) {
        List<Edit> edits = step.way().edits();
        return bench.candidates().stream()
                .filter(c -> c.edits().equals(edits)
                        || (c.step().of().equals(step.of())
                                && c.step().way().message().equals(step.way().message())))
                .findFirst()
                .orElseGet(() -> new CandidateChange(
                        step, Set.of(), Set.of(), null, step.way().gain()));
    }

    private @Nullable CandidateChange most() {
        CandidateChange most = null;
        for (CandidateChange candidate : bench.candidates()) {
            if (left.keySet().stream().anyMatch(fairly(candidate)::contains)
                    && (most == null || isMore(candidate, most))) {
                most = candidate;
            }
        }
        return most;
    }

    private boolean isMore(CandidateChange one, CandidateChange other) {
        for (Level level : List.of(Level.ERROR, Level.WARNING, Level.NOTE)) {
            int difference = findings(one, level) - findings(other, level);
            if (difference != 0) {
                return difference > 0;
            }
        }
        return one.gain().orElse(0) > other.gain().orElse(0);
    }

    private int findings(CandidateChange candidate, Level level) {
        return left.entrySet().stream()
                .filter(e -> fairly(candidate).contains(e.getKey()))
                .map(Map.Entry::getValue)
                .filter(g -> g.worst().outcome().level() == level)
                .mapToInt(GroupedFailure::size)
                .sum();
    }

    /** {@return what a change clears without bringing a failure as bad as it} */
    private Set<FindingPlace> fairly(CandidateChange candidate) {
        Set<FindingPlace> fairly = new LinkedHashSet<>();
        for (GroupedFailure group : bench.groups()) {
            FindingPlace place = FindingPlace.of(group.worst().outcome());
            if (candidate.clears().contains(place)
                    && candidate.isFairFor(group.worst().outcome().level())) {
                fairly.add(place);
            }
        }
        return fairly;
    }

    private static @Nullable Step advice(GroupedFailure group) {
        for (WayOut way : group.waysForAll()) {
            if (way.edits().isEmpty()) {
                return new Step(way, group.worst().outcome());
            }
        }
        return null;
    }
}
