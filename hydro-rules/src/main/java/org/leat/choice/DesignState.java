package org.leat.choice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Outcome;

/** What a design comes to, place by place: what fails there, and how much is undecided. */
final class DesignState {

    private final Map<FindingPlace, List<Outcome.Fail>> failures = new LinkedHashMap<>();
    private final Map<FindingPlace, Integer> undecided = new LinkedHashMap<>();

    private DesignState() {}

    static DesignState of(Collection<Outcome> outcomes) {
        DesignState state = new DesignState();
        for (Outcome outcome : outcomes) {
            FindingPlace place = FindingPlace.of(outcome);
            if (outcome instanceof Outcome.Fail failure) {
                state.failures.computeIfAbsent(place, p -> new ArrayList<>()).add(failure);
            } else if (outcome.kind() == Kind.OPEN || outcome.kind() == Kind.REVIEW) {
                state.undecided.merge(place, 1, Integer::sum);
            }
        }
        return state;
    }

    /** {@return the failures of exactly or at least that level, in the order of the rules} */
    List<Outcome.Fail> failures(Level level) {
        return failures.values().stream()
                .flatMap(List::stream)
                .filter(f -> f.level().compareTo(level) >= 0)
                .toList();
    }

    /** {@return whether nothing fails at a place any more and no more is undecided there than before} */
    boolean isClear(FindingPlace place, DesignState before) {
        return !failures.containsKey(place) && !isMoreUndecided(place, before);
    }

    /** {@return whether no error is left at a place and no more is undecided there than before} */
    boolean isCalm(FindingPlace place, DesignState before) {
        return failures.getOrDefault(place, List.of()).stream().noneMatch(f -> f.level() == Level.ERROR)
                && !isMoreUndecided(place, before);
    }

    /** {@return whether something is undecided at a place that was decided before} */
    boolean isMoreUndecided(FindingPlace place, DesignState before) {
        return undecided.getOrDefault(place, 0) > before.undecided.getOrDefault(place, 0);
    }
}
