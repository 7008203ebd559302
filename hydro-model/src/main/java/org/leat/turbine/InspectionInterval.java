package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Running time between two looks at the buckets: a tenth of the time to a crack by {@link CyclesToCrack}.
 *
 * <p>{@code t = 0.1 N/f}; {@code N} cycles to a crack [1]; {@code f} jets passed by one bucket in a second [1/s]. Valid
 * for all physical inputs. Source: common practice, a tenth for the scatter of fatigue tests. Look with the water shut
 * and the wheel held; replace at the first crack.
 */
public final class InspectionInterval {

    private InspectionInterval() {}

    private static final double SHARE = 0.1;

    /** {@return running time [s]} */
    public static double of(double cyclesToCrack, int jets, double angularSpeed) {
        Physical.positive("cyclesToCrack", cyclesToCrack);
        Physical.positive("jets", jets);
        Physical.positive("angularSpeed", angularSpeed);
        return SHARE * cyclesToCrack * 2 * Math.PI / (jets * angularSpeed);
    }
}
