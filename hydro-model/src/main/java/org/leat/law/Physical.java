package org.leat.law;

import org.apiguardian.api.API;

/** Refuses numbers that cannot stand for what they are called: whoever passes one has made a programming error. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class Physical {

    private Physical() {}

    /**
     * {@return the value}
     *
     * @throws IllegalArgumentException unless it is finite and above zero
     */
    public static double positive(String name, double value) {
        if (!(value > 0) || value == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(name + " must be finite and above zero, not " + value);
        }
        return value;
    }

    /**
     * {@return the value}
     *
     * @throws IllegalArgumentException unless it is finite and not below zero
     */
    public static double notNegative(String name, double value) {
        if (!(value >= 0) || value == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(name + " must be finite and not below zero, not " + value);
        }
        return value;
    }

    /**
     * {@return the value}
     *
     * @throws IllegalArgumentException unless it is finite
     */
    public static double finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be finite, not " + value);
        }
        return value;
    }

    /**
     * {@return the value}
     *
     * @throws IllegalArgumentException unless it lies between the two limits, both included
     */
    public static double within(String name, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(name + " must lie from " + low + " to " + high + ", not " + value);
        }
        return value;
    }
}
