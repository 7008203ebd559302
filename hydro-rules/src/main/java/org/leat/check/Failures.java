package org.leat.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apiguardian.api.API;

/**
 * What fails, counted by rule, element and level, so that two states of a design can be compared. Cases are counted, not
 * named: a case is called after its nozzles, and a change of the nozzles renames it.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class Failures {

    private record Place(String rule, String path, Level level) {}

    private final Map<Place, Integer> counts = new HashMap<>();
    private final List<Place> order = new ArrayList<>();

    private Failures() {}

    /** {@return the failures among outcomes} */
    public static Failures of(Collection<Outcome> outcomes) {
        Failures failures = new Failures();
        for (Outcome outcome : outcomes) {
            if (outcome.kind() == Kind.FAIL) {
                for (Level level : Level.values()) {
                    if (level.compareTo(outcome.level()) <= 0) {
                        failures.count(new Place(outcome.rule(), outcome.path(), level));
                    }
                }
            }
        }
        return failures;
    }

    private void count(Place place) {
        if (counts.merge(place, 1, Integer::sum) == 1) {
            order.add(place);
        }
    }

    /**
     * {@return the first rule of which more fails here than before, at a level or a worse one; empty if none}
     *
     * <p>More cases of one element count as more, and so does a failure that was milder before.
     */
    public Optional<String> worseThan(Failures before, Level level) {
        return order.stream()
                .filter(place -> place.level().compareTo(level) >= 0)
                .filter(place -> counts.getOrDefault(place, 0) > before.counts.getOrDefault(place, 0))
                .map(Place::rule)
                .findFirst();
    }
}
