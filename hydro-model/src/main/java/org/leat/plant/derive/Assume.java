package org.leat.plant.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.rows.Spread;
import org.leat.plant.numbers.Assumption;
import org.leat.plant.numbers.Assumption.Weight;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Collects what has to be assumed while a design is turned into numbers. Used by one derivation, then thrown away. */
final class Assume {

    static final String COMMON_PRACTICE = "common practice";

    private final Map<String, Double> instead;
    private final List<Part<?>> near;
    private final List<Part<?>> parts = new ArrayList<>();
    private List<Assumption> assumptions = new ArrayList<>();

    /**
     * One part of a plant as it was derived.
     *
     * @param inputs what it was derived from
     * @param value the part's numbers
     * @param assumptions made on the way
     */
    record Part<T>(List<@Nullable Object> inputs, T value, List<Assumption> assumptions) {

        private boolean touchedBy(Map<String, Double> instead) {
            return !instead.isEmpty() && assumptions.stream().anyMatch(a -> instead.containsKey(a.path()));
        }
    }

    /**
     * @param instead values to take in place of what is assumed, by path
     * @param near parts of a plant that may have much in common; empty where there is none
     */
    Assume(Map<String, Double> instead, List<Part<?>> near) {
        this.instead = instead;
        this.near = near;
    }

    List<Assumption> list() {
        return assumptions;
    }

    /** {@return every part in the order of derivation} Those with a moved assumption are of no use to others. */
    List<Part<?>> parts() {
        return List.copyOf(parts);
    }

    /** {@return a part's numbers: those of the plant nearby where it was derived from the very same, else derived now} */
    @SuppressWarnings("unchecked") // parts come in the same order in every plant
    <T> T part(List<@Nullable Object> inputs, Supplier<T> derive) {
        Part<?> known = parts.size() < near.size() ? near.get(parts.size()) : null;
        if (known != null && theSame(known.inputs(), inputs) && !known.touchedBy(instead)) {
            parts.add(known);
            known.assumptions().forEach(this::note);
            return (T) known.value();
        }
        List<Assumption> before = assumptions;
        assumptions = new ArrayList<>();
        T value = derive.get();
        Part<T> part = new Part<>(inputs, value, List.copyOf(assumptions));
        assumptions = before;
        part.assumptions().forEach(this::note);
        parts.add(part.touchedBy(instead) ? new Part<>(List.of(), value, part.assumptions()) : part);
        return value;
    }

    /** Whether all inputs are the same objects, or equal numbers: to compare all that a part holds would tell no more. */
    private static boolean theSame(List<@Nullable Object> known, List<@Nullable Object> inputs) {
        boolean same = known.size() == inputs.size();
        for (int i = 0; same && i < inputs.size(); i++) {
            Object was = known.get(i);
            Object now = inputs.get(i);
            same = was == now || (was instanceof Double && was.equals(now));
        }
        return same;
    }

    private void note(Assumption assumption) {
        assumptions.removeIf(earlier -> earlier.path().equals(assumption.path()));
        assumptions.add(assumption);
    }

    /** {@return the assumed value, or the one to be taken in its place} */
    double value(
            String path,
            QuantityKind kind,
            double value,
            double low,
            double high,
            String reason,
            String source,
            Weight weight) {
        Double moved = instead.get(path);
        double taken = moved == null ? value : moved;
        note(new Assumption(path, kind, taken, low, high, reason, source, weight));
        return taken;
    }

    /** {@return a sound default by common practice} */
    double sound(String path, QuantityKind kind, double value, double low, double high, String reason) {
        return value(path, kind, value, low, high, reason, COMMON_PRACTICE, Weight.SOUND_DEFAULT);
    }

    /** {@return a placeholder by common practice} */
    double placeholder(String path, QuantityKind kind, double value, double low, double high, String reason) {
        return value(path, kind, value, low, high, reason, COMMON_PRACTICE, Weight.PLACEHOLDER);
    }

    /** {@return what the design states, else a sound default by common practice} */
    double stated(
            @Nullable Quantity<?> stated,
            String path,
            QuantityKind kind,
            double value,
            double low,
            double high,
            String reason) {
        return stated != null ? Si.of(stated) : sound(path, kind, value, low, high, reason);
    }

    /** {@return what the design states, else the usual value of a table} */
    double tabled(@Nullable Quantity<?> stated, String path, QuantityKind kind, Spread spread, String reason) {
        return stated != null
                ? Si.of(stated)
                : value(
                        path,
                        kind,
                        spread.usual(),
                        spread.low(),
                        spread.high(),
                        reason,
                        spread.source(),
                        Weight.SOUND_DEFAULT);
    }
}
