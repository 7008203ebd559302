package org.leat.pack.plausibility;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.tables.PlausibleRange;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Collects what a design states, for as much of it as the table has a range. */
final class StatedList {

    private final List<Stated> all = new ArrayList<>();

    /** Nothing where the value is absent. */
    void add(String path, String quantity, @Nullable Quantity<?> value, QuantityKind kind) {
        if (value != null) {
            add(path, quantity, Si.of(value), kind);
        }
    }

    /** Nothing where the value is absent. */
    void add(String path, String quantity, Optional<Double> value, QuantityKind kind) {
        value.ifPresent(stated -> add(path, quantity, stated.doubleValue(), kind));
    }

    void add(String path, String quantity, double value, QuantityKind kind) {
        PlausibleRange.find(quantity).ifPresent(range -> all.add(new Stated(path, range, value, kind)));
    }

    List<Stated> all() {
        return List.copyOf(all);
    }
}
