package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Charge current against what a battery stands: I ≤ r C, with r from its chemistry (1/s) and C its capacity (A·s). Of the
 * source's current the loads take their share first, but a day without loads decides: count none of them.
 *
 * <p>Lead wants a least current too, C/50 on the mean, or it sulphates [common practice].
 */
public final class ChargeCurrentLimit {

    private static final double FIFTY_HOURS = 50 * 3600.0;

    private ChargeCurrentLimit() {}

    /** {@return greatest charge current, A} */
    public static double greatest(double chargeRate, double capacity) {
        Physical.positive("charge rate", chargeRate);
        return chargeRate * Physical.positive("capacity", capacity);
    }

    /** {@return least capacity, A·s, that stands a current, A} */
    public static double leastCapacity(double chargeRate, double current) {
        Physical.notNegative("current", current);
        return current / Physical.positive("charge rate", chargeRate);
    }

    /** {@return least mean current into lead, A; common practice} */
    public static double leastMeanForLead(double capacity) {
        return Physical.positive("capacity", capacity) / FIFTY_HOURS;
    }
}
