package org.leat.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apiguardian.api.API;

/**
 * What fails, by rule, element, case and level, so that two states of a design can be compared. Where the same cases were
 * judged in both, each is compared with itself; else they are counted: a case is called after its nozzles, and a change of
 * the nozzles renames it.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class Failures {

    private record Place(String rule, String path) {}

    private record Failing(Place place, Level level) {}

    private final Map<Failing, List<String>> failing = new HashMap<>();
    private final Map<Place, Set<String>> judged = new HashMap<>();
    private final List<Failing> order = new ArrayList<>();

    private Failures() {}

    /** {@return the failures among all outcomes} */
    public static Failures of(Collection<Outcome> outcomes) {
        Failures failures = new Failures();
        for (Outcome outcome : outcomes) {
            Place place = new Place(outcome.rule(), outcome.path());
            failures.judged.computeIfAbsent(place, p -> new HashSet<>()).add(outcome.during());
            if (outcome.kind() == Kind.FAIL) {
                for (Level level : Level.values()) {
                    if (level.compareTo(outcome.level()) <= 0) {
                        failures.add(new Failing(place, level), outcome.during());
                    }
                }
            }
        }
        return failures;
    }

    private void add(Failing what, String during) {
        List<String> cases = failing.computeIfAbsent(what, w -> new ArrayList<>());
        if (cases.isEmpty()) {
            order.add(what);
        }
        cases.add(during);
    }

    /**
     * {@return the first rule of which more fails here than before, at a level or a worse one; empty if none}
     *
     * <p>More cases of one element count as more, another case of the same ones too, and so does a failure that was milder
     * before.
     */
    public Optional<String> worseThan(Failures before, Level level) {
        return order.stream()
                .filter(what -> what.level().compareTo(level) >= 0 && isWorse(what, before))
                .map(what -> what.place().rule())
                .findFirst();
    }

    private boolean isWorse(Failing what, Failures before) {
        List<String> now = failing.getOrDefault(what, List.of());
        List<String> then = before.failing.getOrDefault(what, List.of());
        if (now.size() > then.size()) {
            return true;
        }
        boolean sameCases =
                judged.getOrDefault(what.place(), Set.of()).equals(before.judged.getOrDefault(what.place(), Set.of()));
        return sameCases && !new HashSet<>(then).containsAll(now);
    }
}
