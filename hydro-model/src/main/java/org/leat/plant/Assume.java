package org.leat.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.Spread;
import org.leat.plant.Assumption.Weight;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Collects what has to be assumed while a design is turned into numbers. Used by one derivation, then thrown away. */
final class Assume {

    static final String COMMON_PRACTICE = "common practice";

    private final Map<String, Double> instead;
    private final List<Assumption> assumptions = new ArrayList<>();

    Assume(Map<String, Double> instead) {
        this.instead = instead;
    }

    List<Assumption> list() {
        return assumptions;
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
        assumptions.removeIf(earlier -> earlier.path().equals(path));
        assumptions.add(new Assumption(path, kind, taken, low, high, reason, source, weight));
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
