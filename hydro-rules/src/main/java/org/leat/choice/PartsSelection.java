package org.leat.choice;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.DesignEdits;
import org.leat.check.Edit;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Trial;
import org.leat.plant.Plant;
import org.leat.prices.PriceList;
import org.leat.season.FlowClasses;

/**
 * Sets of parts as a problem: cost in ten-thousandths of the currency, gain in J of the year, faults are warnings. A set must not be
 * if a rule finds an error that counts, or can no longer tell whether one stands where it could on the design as it is.
 *
 * <p>Choices of the water side come first: what the jets bring is the bound of what any machine behind them makes.
 */
final class PartsSelection implements SelectionProblem {

    private static final int PRICE_PLACES = 4;

    /** Plants of the water side kept for the machines to be tried on them. */
    private static final int KEPT = 2_000;

    /** Rules that are asked first because they forbade most so far: it spares time and changes no answer. */
    private static final int ASKED_FIRST = 12;

    /** What the water side of a plant is made of. */
    private static final List<String> WATER = List.of("/site", "/intake", "/penstock", "/nozzles");

    private final Trial trial;
    private final FlowClasses flows;
    private final Set<FindingPlace> uncounted;
    private final Map<FindingPlace, Integer> openBefore;

    /** In the order of the search. */
    private final List<PriceList.Choice> choices;

    private final int water;
    private final long[][] costs;
    private final long[] leastRest;

    private final Map<List<Integer>, Watered> watered =
            Collections.synchronizedMap(new LinkedHashMap<>(64, 0.75f, true) {
                private static final long serialVersionUID = 1;

                @Override
                protected boolean removeEldestEntry(Map.Entry<List<Integer>, Watered> eldest) {
                    return size() > KEPT;
                }
            });
    private final Map<String, LongAdder> forbidding = new ConcurrentHashMap<>();

    /** A plant with the parts of its water side chosen. */
    private record Watered(@Nullable Plant plant, double energyOfJets) {}

    PartsSelection(PriceList list, Trial trial, FlowClasses flows, Set<FindingPlace> uncounted) {
        this.trial = trial;
        this.flows = flows;
        this.uncounted = Set.copyOf(uncounted);
        this.openBefore = open(trial.outcomes());
        this.choices = list.choices().stream()
                .sorted(Comparator.comparing(choice -> !isWater(choice)))
                .toList();
        this.water = (int) choices.stream().filter(PartsSelection::isWater).count();
        this.costs = choices.stream()
                .map(choice -> choice.parts().stream()
                        .mapToLong(part -> ten(part.price()))
                        .toArray())
                .toArray(long[][]::new);
        this.leastRest = new long[costs.length + 1];
        for (int i = costs.length - 1; i >= 0; i--) {
            leastRest[i] = leastRest[i + 1] + Arrays.stream(costs[i]).min().orElse(0);
        }
    }

    private static boolean isWater(PriceList.Choice choice) {
        return choice.paths().stream()
                .anyMatch(path -> WATER.stream().anyMatch(part -> path.equals(part) || path.startsWith(part + "/")));
    }

    private static long ten(BigDecimal price) {
        return price.movePointRight(PRICE_PLACES).longValue();
    }

    /** {@return what a cost is in the currency} */
    static BigDecimal price(long cost) {
        return BigDecimal.valueOf(cost, PRICE_PLACES).stripTrailingZeros();
    }

    @Override
    public int[] options() {
        return choices.stream().mapToInt(choice -> choice.parts().size()).toArray();
    }

    @Override
    public long cost(int[] set) {
        return cost(set, set.length);
    }

    /** {@return the cost of the options that are known} */
    long cost(int[] set, int known) {
        long cost = 0;
        for (int i = 0; i < known; i++) {
            cost += costs[i][set[i]];
        }
        return cost;
    }

    @Override
    public long leastCost(int[] set, int known, double gain) {
        return mostGain(set, known) > gain ? cost(set, known) + leastRest[known] : NONE;
    }

    @Override
    public double mostGain(int[] set, int known) {
        return known < water ? Double.POSITIVE_INFINITY : watered(set).energyOfJets();
    }

    private Watered watered(int[] set) {
        List<Integer> key = IntStream.range(0, water).mapToObj(i -> set[i]).toList();
        Watered known = watered.get(key);
        if (known == null) {
            known = watered(edits(set, 0, water));
            watered.put(key, known);
        }
        return known;
    }

    private Watered watered(List<Edit> edits) {
        try {
            Plant plant =
                    edits.isEmpty() ? trial.plant() : trial.plant().like(DesignEdits.apply(trial.design(), edits));
            return new Watered(plant, flows.ofJets(plant));
        } catch (IllegalArgumentException e) {
            return new Watered(null, Double.NEGATIVE_INFINITY); // such parts do not go together
        }
    }

    @Override
    public double gain(int[] set) {
        Watered before = watered(set);
        Plant near = before.plant();
        if (near == null) {
            return Double.NaN;
        }
        try {
            List<Edit> edits = edits(set, water, choices.size());
            Plant plant = edits.isEmpty() ? near : near.like(DesignEdits.apply(near.design(), edits));
            return flows.made(plant);
        } catch (IllegalArgumentException e) {
            return Double.NaN;
        }
    }

    @Override
    public int check(int[] set) {
        int warnings = 0;
        Map<FindingPlace, Integer> open = new HashMap<>();
        try (Stream<Outcome> answers =
                trial.assuming(edits(set, 0, choices.size()), Map.of()).answers(mostForbidding())) {
            for (Outcome outcome : (Iterable<Outcome>) answers::iterator) {
                if (forbids(outcome, open)) {
                    forbidding
                            .computeIfAbsent(outcome.rule(), r -> new LongAdder())
                            .increment();
                    return FORBIDDEN; // whatever else there is
                }
                warnings += isWarning(outcome) ? 1 : 0;
            }
            return warnings;
        } catch (IllegalArgumentException e) {
            return FORBIDDEN; // such parts do not go together
        }
    }

    private List<String> mostForbidding() {
        return forbidding.entrySet().stream()
                .map(e -> Map.entry(e.getKey(), e.getValue().sum()))
                .sorted(Map.Entry.<String, Long>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey()))
                .limit(ASKED_FIRST)
                .map(Map.Entry::getKey)
                .toList();
    }

    private boolean forbids(Outcome outcome, Map<FindingPlace, Integer> open) {
        if (outcome.level() != Level.ERROR) {
            return false;
        }
        FindingPlace place = FindingPlace.of(outcome);
        if (outcome instanceof Outcome.Fail) {
            return !uncounted.contains(place);
        }
        return outcome.kind() == Kind.OPEN && open.merge(place, 1, Integer::sum) > openBefore.getOrDefault(place, 0);
    }

    private boolean isWarning(Outcome outcome) {
        return outcome instanceof Outcome.Fail
                && outcome.level() == Level.WARNING
                && !uncounted.contains(FindingPlace.of(outcome));
    }

    private static Map<FindingPlace, Integer> open(List<Outcome> outcomes) {
        Map<FindingPlace, Integer> open = new HashMap<>();
        outcomes.stream()
                .filter(o -> o.kind() == Kind.OPEN && o.level() == Level.ERROR)
                .forEach(o -> open.merge(FindingPlace.of(o), 1, Integer::sum));
        return open;
    }

    /** {@return what forbids a design so changed, by rule: errors, and what can no longer be told} */
    List<Outcome> forbidding(List<Edit> edits) {
        Map<FindingPlace, Integer> open = new HashMap<>();
        try {
            return trial.assuming(edits, Map.of()).outcomes().stream()
                    .filter(outcome -> forbids(outcome, open))
                    .toList();
        } catch (IllegalArgumentException e) {
            return List.of(); // such parts do not go together
        }
    }

    /** {@return energy of a design so changed, J in the year; not a number where it can never be} */
    double energy(List<Edit> edits) {
        try {
            return flows.made(trial.plant().like(DesignEdits.apply(trial.design(), edits)));
        } catch (IllegalArgumentException e) {
            return Double.NaN;
        }
    }

    /** {@return the failures of a set that count, errors first, then in the order of the rules} */
    List<Outcome.Fail> failures(List<Edit> edits) {
        return trial.assuming(edits, Map.of()).outcomes().stream()
                .filter(Outcome.Fail.class::isInstance)
                .map(Outcome.Fail.class::cast)
                .filter(f -> f.level() != Level.NOTE && !uncounted.contains(FindingPlace.of(f)))
                .sorted(Comparator.comparing(Outcome.Fail::level).reversed())
                .toList();
    }

    private List<Edit> edits(int[] set, int from, int to) {
        List<Edit> edits = new ArrayList<>();
        for (int i = from; i < to; i++) {
            edits.addAll(choices.get(i).parts().get(set[i]).edits());
        }
        return edits;
    }

    /** {@return the parts of a set by the name of their choice} */
    Map<String, PriceList.Part> parts(List<Integer> set) {
        Map<String, PriceList.Part> parts = new HashMap<>();
        for (int i = 0; i < choices.size(); i++) {
            parts.put(choices.get(i).name(), choices.get(i).parts().get(set.get(i)));
        }
        return parts;
    }
}
