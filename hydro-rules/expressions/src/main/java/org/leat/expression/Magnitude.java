package org.leat.expression;

import org.leat.quantity.QuantityKind;

/**
 * A value with a unit.
 *
 * @param kind what it measures
 * @param si in the kind's SI unit
 */
public record Magnitude(QuantityKind kind, double si) {

    /** {@return −1, 0 or 1} */
    int against(Magnitude other) {
        if (kind != other.kind) {
            throw new IllegalArgumentException(kind.label() + " against " + other.kind.label());
        }
        return Double.compare(si, other.si);
    }
}
