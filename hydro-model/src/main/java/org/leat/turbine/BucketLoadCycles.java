package org.leat.turbine;

import org.leat.law.Physical;

/**
 * How often a bucket passes a jet: {@code n = jets omega t/(2 pi)}.
 *
 * <p>Symbols: {@code omega} angular speed [rad/s]; {@code t} running time [s]. A thousand million a year is usual: beyond
 * the cycles at which most materials are tested. Valid for all physical inputs. Source: counting.
 */
public final class BucketLoadCycles {

    private BucketLoadCycles() {}

    /** {@return load cycles on one bucket [1]} */
    public static double of(int jets, double angularSpeed, double runningTime) {
        Physical.notNegative("jets", jets);
        Physical.notNegative("angularSpeed", angularSpeed);
        Physical.notNegative("runningTime", runningTime);
        return jets * angularSpeed * runningTime / (2 * Math.PI);
    }
}
