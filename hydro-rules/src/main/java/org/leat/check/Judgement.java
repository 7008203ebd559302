package org.leat.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.apiguardian.api.API;
import org.leat.design.Design;
import org.leat.plant.Plant;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Shut;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;
import org.leat.season.DesignYear;

/**
 * What a rule looks at: the design, the plant solved from it, and the limits in force for this rule. What it gives never
 * changes; safe to share between threads.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Judgement {

    private final RuleInForce rule;
    private final Plant plant;
    private final Trials trials;

    Judgement(RuleInForce rule, Trials trials) {
        this.rule = rule;
        this.plant = trials.plant();
        this.trials = trials;
    }

    private Judgement(RuleInForce rule, Plant plant) {
        this(rule, new Trials(plant));
    }

    Trials trials() {
        return trials;
    }

    /** {@return a judgement by a rule's own limits} For tests of one rule. */
    public static Judgement of(Rule rule, Design design) {
        return new Judgement(RuleInForce.of(rule.card(), "", null), Plant.of(design));
    }

    /** {@return the plant's SI numbers} */
    public PlantNumbers numbers() {
        return plant.numbers();
    }

    /** {@return the plant in each situation; where it could not be solved, the rule is open for the plant's reason} */
    public Cases solved() {
        if (!plant.unsolvable().isEmpty()) {
            Amount.Unknown reason = plant.unsolvable().get(0);
            throw new OpenQuestion(at(reason.path()).unknown(reason));
        }
        return plant.solve();
    }

    /** {@return one answer for each item; an item for which an input is absent is open and the others go on} */
    public <T> List<Outcome> each(Collection<T> items, Function<T, Outcome> judge) {
        List<Outcome> outcomes = new ArrayList<>();
        for (T item : items) {
            try {
                outcomes.add(judge.apply(item));
            } catch (OpenQuestion question) {
                outcomes.add(question.answer());
            }
        }
        return outcomes;
    }

    /**
     * {@return as {@link #each}; the one answer where there is no item}
     *
     * @param none what is said then, mostly that there is nothing to judge
     */
    public <T> List<Outcome> eachOr(Outcome none, Collection<T> items, Function<T, Outcome> judge) {
        return items.isEmpty() ? List.of(none) : each(items, judge);
    }

    /** {@return as {@link #each}, by the items' places in their list} */
    public List<Outcome> eachOf(int count, IntFunction<Outcome> judge) {
        return each(IntStream.range(0, count).boxed().toList(), judge::apply);
    }

    /** {@return the answer to a question; where an input is absent, what is made of the open answer} */
    public <T> T answered(Supplier<T> question, Function<Outcome, T> open) {
        try {
            return question.get();
        } catch (OpenQuestion absent) {
            return open.apply(absent.answer());
        }
    }

    /** {@return the answers to several questions; one for which an input is absent is open and the others go on} */
    public List<Outcome> all(List<Supplier<Outcome>> questions) {
        return each(questions, Supplier::get);
    }

    /** {@return as {@link #all(List)}} */
    @SafeVarargs
    @SuppressWarnings("varargs") // handed on to be copied, never written to
    public final List<Outcome> all(Supplier<Outcome>... questions) {
        return all(List.of(questions));
    }

    /** {@return what the builder chose} */
    public Design design() {
        return plant.design();
    }

    /** {@return the plant in SI numbers} */
    public Plant plant() {
        return plant;
    }

    /**
     * {@return the plant through its year, hour by hour, nozzles changed on a weekly visit; empty where the stream is not known for
     * the year, only as one flow, and where something else is not told} Run once for all rules.
     */
    public Optional<DesignYear.Told> year() {
        boolean known = plant.numbers().site().stream().stream().anyMatch(l -> l.kind() != StreamLevel.Kind.CONSTANT);
        return known && trials.year() instanceof DesignYear.Told told ? Optional.of(told) : Optional.empty();
    }

    /** {@return all nozzles shut, water standing; known also where the plant could not be solved} */
    public Shut shut() {
        return plant.solve().shut();
    }

    /** {@return every limit in force, by name} */
    public Map<String, Limit> limits() {
        return rule.limits();
    }

    /**
     * {@return a limit in force}
     *
     * @throws IllegalArgumentException if the rule's card does not list it
     */
    public Limit limit(String name) {
        Limit limit = rule.limits().get(name);
        if (limit == null) {
            throw new IllegalArgumentException(rule.card().id() + " has no limit called " + name);
        }
        return limit;
    }

    /** {@return the place to answer for: a path as in {@link Outcome#path()}, {@code /} for the whole design} */
    public Spot at(String path) {
        return Spot.of(rule, path);
    }

    /**
     * {@return the same rule looking at the design with edits applied, solved again}
     *
     * @throws IllegalArgumentException if an edit leads nowhere or its value does not fit there
     * @throws org.leat.design.ImpossibleValueException if the edited design can never be
     */
    public Judgement with(List<Edit> edits) {
        return new Judgement(rule, trials.with(edits));
    }

    /** {@return the same rule looking at the plant with some numbers replaced, as {@link Plant}'s with… give it} */
    public Judgement with(Plant changed) {
        return new Judgement(rule, changed);
    }

    /** {@return battery-side watts of another plant more than of this one, nozzles open as built; empty if unknown} */
    public OptionalDouble gain(Plant instead) {
        OptionalDouble before = power(plant);
        OptionalDouble after = power(instead);
        return before.isEmpty() || after.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(after.getAsDouble() - before.getAsDouble());
    }

    private static OptionalDouble power(Plant plant) {
        return plant.solve().running().stream()
                .limit(1)
                .mapToDouble(asBuilt -> asBuilt.operatingPoint().batteryPower())
                .findFirst();
    }
}
