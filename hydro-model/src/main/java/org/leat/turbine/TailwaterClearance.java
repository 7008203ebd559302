package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Clear height between the wheel's lowest point and tail water: four jet diameters and half a bucket, so that spent
 * water falls free and splash does not brake the wheel.
 *
 * <p>Jet diameter and bucket length [m]. Valid for all physical inputs. Source: common practice (three to four jet
 * diameters are usual; the greater is taken). What lies below the wheel's centre is lost head.
 */
public final class TailwaterClearance {

    private TailwaterClearance() {}

    private static final double JET_DIAMETERS = 4;

    /** {@return least clear height [m]} */
    public static double least(double jetDiameter, double bucketLength) {
        Physical.positive("jetDiameter", jetDiameter);
        Physical.notNegative("bucketLength", bucketLength);
        return JET_DIAMETERS * jetDiameter + 0.5 * bucketLength;
    }
}
