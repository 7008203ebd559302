package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Overload protection of a cable: I_B ≤ I_n ≤ I_z and I_2 ≤ 1.45 I_z, where I_B is the design current, I_n the rated current
 * of the device, I_z what the cable carries as it is laid, and I_2 the current that surely operates the device. A device that
 * follows the third condition may be wide open by the second alone: a gG fuse of 16 A and more needs I_n ≤ 0.906 I_z.
 *
 * <p>Source: IEC 60364-4-43:2008, 433.1 (read in a reproduction). I_2/I_n: 1.45 for breakers (IEC 60898-1, from memory); gG
 * fuses 1.6 from 16 A, 1.9 above 4 A, 2.1 up to 4 A (IEC 60269-1 and -3, from memory). All currents in A.
 *
 * @param carriesLoad I_B ≤ I_n: the device does not open in service
 * @param withinCapacity I_n ≤ I_z: the cable carries what the device lets pass
 * @param opensInTime I_2 ≤ 1.45 I_z: a small overload does not go on for ever
 */
public record ProtectiveDeviceCoordination(boolean carriesLoad, boolean withinCapacity, boolean opensInTime) {

    /** I_2/I_n of a circuit breaker. */
    public static final double BREAKER = 1.45;

    /**
     * {@return the three conditions}
     *
     * @param designCurrent I_B
     * @param ratedCurrent I_n
     * @param capacity I_z
     * @param operatingRatio I_2/I_n
     */
    public static ProtectiveDeviceCoordination of(
            double designCurrent, double ratedCurrent, double capacity, double operatingRatio) {
        Physical.notNegative("design current", designCurrent);
        Physical.positive("rated current", ratedCurrent);
        Physical.positive("capacity", capacity);
        Physical.within("I2/In", operatingRatio, 1, 3);
        return new ProtectiveDeviceCoordination(
                designCurrent <= ratedCurrent,
                ratedCurrent <= capacity,
                operatingRatio * ratedCurrent <= 1.45 * capacity);
    }

    /** {@return I_2/I_n of a gG fuse of a rating} */
    public static double fuse(double ratedCurrent) {
        Physical.positive("rated current", ratedCurrent);
        return ratedCurrent >= 16 ? 1.6 : ratedCurrent > 4 ? 1.9 : 2.1;
    }

    /** {@return the greatest I_n that protects a capacity I_z} */
    public static double greatestRating(double capacity, double operatingRatio) {
        Physical.positive("capacity", capacity);
        Physical.within("I2/In", operatingRatio, 1, 3);
        return Math.min(1, 1.45 / operatingRatio) * capacity;
    }

    /** {@return whether all three hold} */
    public boolean holds() {
        return carriesLoad && withinCapacity && opensInTime;
    }
}
