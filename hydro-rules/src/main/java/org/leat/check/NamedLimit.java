package org.leat.check;

import org.apiguardian.api.API;
import org.leat.quantity.QuantityKind;

/**
 * A limit that a rule compares with and that settings may change.
 *
 * @param name of its own within the rule
 * @param kind what it measures
 * @param standard the value in SI that holds unless settings change it
 * @param unit trade unit in which people read it
 * @param source standard and clause, handbook and page, or "common practice"
 * @param safer on which side of the standard value people are safer
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record NamedLimit(String name, QuantityKind kind, double standard, String unit, String source, Safer safer) {

    /** A limit of which nobody said which way is safer. */
    public NamedLimit(String name, QuantityKind kind, double standard, String unit, String source) {
        this(name, kind, standard, unit, source, Safer.UNSAID);
    }

    /** {@return the same, people being safer on that side} */
    public NamedLimit safer(Safer side) {
        return new NamedLimit(name, kind, standard, unit, source, side);
    }

    /** {@return whether a value, in SI, asks for less safety than the standard one, as far as anybody said} */
    public boolean isLoosenedBy(double value) {
        return switch (safer) {
            case LOWER -> value > standard;
            case HIGHER -> value < standard;
            case UNSAID -> value != standard;
        };
    }

    /**
     * {@return whether a value, in SI, is one that somebody may answer for at all}
     *
     * <p>A safety factor never falls below one, and a share of what something stands never rises above it: beyond that the
     * limit asks for what breaks.
     */
    public boolean allows(double value) {
        if (kind != QuantityKind.RATIO) {
            return true;
        }
        return switch (safer) {
            case HIGHER -> standard < 1 || value >= 1;
            case LOWER -> standard > 1 || value <= 1;
            case UNSAID -> true;
        };
    }

    /** On which side of a limit's own value people are safer. */
    public enum Safer {
        /** A lower limit is the stricter one. */
        LOWER,
        /** A higher limit is the stricter one. */
        HIGHER,
        /** Nobody said: to move it either way is taken to be unsafe. */
        UNSAID
    }
}
