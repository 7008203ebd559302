package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Current a battery takes at its absorption voltage: constant until the voltage is reached, then falling with the charge that
 * is still missing, I = min(I_offered, α Q), hence I = I_0 exp(−α t) and Q = Q_0 exp(−α t) in time.
 *
 * <p>Source: J. A. Mas, first law of charge acceptance of lead (1967, from memory). α = 1/h, the ampere-hour rule: as many
 * amperes as ampere-hours are missing (Vinal, Storage Batteries, from memory). Lithium takes the offered current to 90 % and
 * more: α of 5/h [common practice]. α falls in the cold and with age.
 *
 * <p>Symbols: Q missing charge, A·s; α acceptance ratio, 1/s; t time since the taper began, s.
 */
public final class ChargeAcceptance {

    /** α of lead by the ampere-hour rule, 1/s. */
    public static final double LEAD = 1 / 3600.0;

    /** α of lithium cells, 1/s; common practice. */
    public static final double LITHIUM = 5 / 3600.0;

    private ChargeAcceptance() {}

    /** {@return current into the battery, A} */
    public static double current(double offered, double missing, double acceptance) {
        Physical.notNegative("offered current", offered);
        Physical.notNegative("missing charge", missing);
        return Math.min(offered, Physical.positive("acceptance ratio", acceptance) * missing);
    }

    /**
     * {@return time until the missing charge has fallen to a rest, s}
     *
     * @param offered current, A, above nil
     * @param missing at the beginning, A·s
     * @param rest A·s, above nil, for the last of it takes for ever
     */
    public static double time(double offered, double missing, double rest, double acceptance) {
        Physical.positive("offered current", offered);
        Physical.notNegative("missing charge", missing);
        Physical.positive("rest", rest);
        double knee = offered / Physical.positive("acceptance ratio", acceptance);
        double constant = Math.max(0, missing - Math.max(knee, rest)) / offered;
        double taper = Math.log(Math.max(1, Math.min(missing, knee) / Math.min(rest, knee))) / acceptance;
        return constant + (rest < knee ? taper : 0);
    }
}
