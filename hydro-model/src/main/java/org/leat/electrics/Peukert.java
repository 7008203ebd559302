package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Time a lead battery lasts at a steady current: t = H (C/(I H))^k with the capacity C at the H-hour rate. In the short form
 * t = C_p/I^k the capacity C_p is the one at 1 A, not the one on the label. Exponent k: flooded 1.2 to 1.6, AGM 1.05 to 1.15, gel
 * 1.1 to 1.25, lithium about 1 [common practice].
 *
 * <p>Source: W. Peukert, Elektrotechnische Zeitschrift 18 (1897) 287. Below the H-hour current it promises more charge than
 * the battery has; there the label's capacity is the most that is counted on. It knows no temperature and no rest.
 *
 * <p>Symbols: I current, A; C capacity, A·s; H discharge time of the rating, s; t time, s.
 */
public final class Peukert {

    private Peukert() {}

    /** {@return time to empty, s, by the formula alone} */
    public static double time(double capacity, double ratedTime, double current, double exponent) {
        Physical.positive("capacity", capacity);
        Physical.positive("rated time", ratedTime);
        Physical.positive("current", current);
        Physical.within("Peukert exponent", exponent, 1, 2);
        return ratedTime * Math.pow(capacity / (current * ratedTime), exponent);
    }

    /** {@return charge that can be drawn, A·s, by the formula alone} */
    public static double charge(double capacity, double ratedTime, double current, double exponent) {
        return current * time(capacity, ratedTime, current, exponent);
    }

    /** {@return charge that can be drawn, A·s, never counted above the rated capacity} */
    public static double usableCharge(double capacity, double ratedTime, double current, double exponent) {
        return Math.min(capacity, charge(capacity, ratedTime, current, exponent));
    }

    /** {@return time to empty, s, by the short form, of a capacity at 1 A, A·s} */
    public static double timeFromCapacityAtOneAmpere(double capacity, double current, double exponent) {
        Physical.positive("capacity", capacity);
        Physical.positive("current", current);
        Physical.within("Peukert exponent", exponent, 1, 2);
        return capacity / Math.pow(current, exponent);
    }
}
