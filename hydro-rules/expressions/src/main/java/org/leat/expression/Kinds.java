package org.leat.expression;

import dev.cel.common.types.CelType;
import dev.cel.common.types.OpaqueType;
import dev.cel.common.types.SimpleType;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.leat.quantity.QuantityKind;

/** The type of each kind of quantity: one of its own, so that only like is compared with like. A ratio is a number. */
final class Kinds {

    private static final Map<QuantityKind, CelType> TYPES;

    static {
        Map<QuantityKind, CelType> types = new EnumMap<>(QuantityKind.class);
        for (QuantityKind kind : QuantityKind.values()) {
            types.put(kind, kind == QuantityKind.RATIO ? SimpleType.DOUBLE : OpaqueType.create(kind.label()));
        }
        TYPES = Collections.unmodifiableMap(types);
    }

    private Kinds() {}

    static CelType type(QuantityKind kind) {
        CelType type = TYPES.get(kind);
        if (type == null) {
            throw new IllegalArgumentException("no kind: " + kind);
        }
        return type;
    }

    /** {@return an SI value as expressions hold it} */
    static Object value(QuantityKind kind, double si) {
        return kind == QuantityKind.RATIO ? (Object) si : new Magnitude(kind, si);
    }
}
