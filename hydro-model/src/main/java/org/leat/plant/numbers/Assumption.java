package org.leat.plant.numbers;

import org.apiguardian.api.API;
import org.leat.quantity.QuantityKind;

/**
 * A value that the design does not state and that had to be taken from somewhere.
 *
 * @param path field of the design that would settle it, as {@code /runner/pitch-diameter}; list items by name
 * @param kind what the value measures
 * @param value taken, SI
 * @param low least value it could well have, SI
 * @param high greatest value it could well have, SI
 * @param reason message key that says why this value, as {@code assumed/water-temperature}
 * @param source where the value comes from, or "common practice"
 * @param weight how much may hang on it
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Assumption(
        String path,
        QuantityKind kind,
        double value,
        double low,
        double high,
        String reason,
        String source,
        Weight weight) {

    /** How far an assumption may be trusted. */
    public enum Weight {
        /** a usual value whose range moves little. */
        SOUND_DEFAULT,
        /** stands in for a number that must still be measured or chosen. */
        PLACEHOLDER
    }

    public Assumption {
        if (!(low <= high) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(path + ": " + low + " <= " + high + ", " + value);
        }
    }
}
