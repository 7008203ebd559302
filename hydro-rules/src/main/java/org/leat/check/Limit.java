package org.leat.check;

import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.QuantityKind;

/**
 * A limit in force.
 *
 * @param named the limit as the rule states it
 * @param value in force, in SI
 * @param changedBy who changed it, as settings name themselves; null where the rule's own value holds
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Limit(
        NamedLimit named, double value, @Nullable String changedBy) {

    /** {@return the limit's name within its rule} */
    public String name() {
        return named.name();
    }

    /** {@return what it measures} */
    public QuantityKind kind() {
        return named.kind();
    }
}
