package org.leat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.QuantityKind;

/**
 * A change of the design that may take a failure away. The checker carries it out, solves the plant again and asks the
 * rule again; only what helps reaches the reader. Immutable.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Change {

    private final List<Edit> edits;
    private final List<Arg> args;
    private final Predicate<Judgement> condition;
    private final Function<Judgement, List<Arg>> result;
    private final OptionalDouble gain;

    private Change(
            List<Edit> edits,
            List<Arg> args,
            Predicate<Judgement> condition,
            Function<Judgement, List<Arg>> result,
            OptionalDouble gain) {
        this.edits = edits;
        this.args = args;
        this.condition = condition;
        this.result = result;
        this.gain = gain;
    }

    /** {@return a change of one value; null takes an optional one out} */
    public static Change of(String path, @Nullable Object value) {
        return of(List.of(new Edit(path, value)));
    }

    /** {@return a change of several values at once} */
    public static Change of(List<Edit> edits) {
        return new Change(List.copyOf(edits), List.of(), j -> true, j -> List.of(), OptionalDouble.empty());
    }

    /** {@return advice that is no edit of the design, to be filled with what it says} */
    public static Change advice() {
        return of(List.of());
    }

    /** {@return the same with another value changed too} */
    public Change and(String path, @Nullable Object value) {
        List<Edit> more = new ArrayList<>(edits);
        more.add(new Edit(path, value));
        return new Change(List.copyOf(more), args, condition, result, gain);
    }

    /** {@return the same, saying one thing more} */
    public Change with(Arg arg) {
        List<Arg> more = new ArrayList<>(args);
        more.add(arg);
        return new Change(edits, List.copyOf(more), condition, result, gain);
    }

    /** {@return the same, saying a physical value more, in SI} */
    public Change with(String name, double si, QuantityKind kind) {
        return with(Arg.of(name, si, kind));
    }

    /** {@return the same, saying a number more} */
    public Change with(String name, long number) {
        return with(Arg.of(name, number));
    }

    /** {@return the same, saying a word more} */
    public Change with(String name, String word) {
        return with(Arg.of(name, word));
    }

    /** {@return the same, offered only where the plant so changed is of use} */
    public Change onlyIf(Predicate<Judgement> changed) {
        return new Change(edits, args, condition.and(changed), result, gain);
    }

    /** {@return the same, saying also what comes of it, read off the plant so changed} */
    public Change telling(Function<Judgement, List<Arg>> changed) {
        return new Change(edits, args, condition, changed, gain);
    }

    /**
     * {@return the same, gaining so many watts at the battery} For what the design as solved does not show; else the gain is
     * that of the plant so changed.
     */
    public Change gaining(double watts) {
        return new Change(edits, args, condition, result, OptionalDouble.of(watts));
    }

    /** {@return what is changed; empty for advice} */
    public List<Edit> edits() {
        return edits;
    }

    OptionalDouble gain(Judgement before, Judgement changed) {
        return gain.isPresent() ? gain : before.gain(changed.plant());
    }

    boolean isOfUse(Judgement changed) {
        return condition.test(changed);
    }

    List<Arg> args(Judgement changed) {
        List<Arg> all = new ArrayList<>(args);
        all.addAll(result.apply(changed));
        return List.copyOf(all);
    }

    /** What may take a failure of a rule away, in the order in which it is to be tried. Meant to be implemented. */
    @FunctionalInterface
    public interface Changes {

        /**
         * {@return the changes to try}
         *
         * @param judgement the same as was judged
         * @param failure one of the rule's
         */
        Stream<Change> of(Judgement judgement, Outcome.Fail failure);
    }
}
