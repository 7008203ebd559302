package org.leat.electrics;

import org.leat.law.Physical;

/**
 * How long loads run on the battery alone, and the capacity for a wanted time: C = E/(D η V), t = D η V C/P, with D the share of
 * the capacity that may be used, η the efficiency from the battery to the load, V the nominal voltage of the bank.
 *
 * <p>Source: energy balance. A stream does not stop at night: a quarter of a day to one day is usual [common practice].
 */
public final class Autonomy {

    private Autonomy() {}

    /** {@return capacity, A·s, that gives an energy at the loads, J} */
    public static double capacity(double energy, double depthOfDischarge, double efficiency, double voltage) {
        Physical.notNegative("energy", energy);
        return energy / perCharge(depthOfDischarge, efficiency, voltage);
    }

    /** {@return time, s, that a capacity, A·s, feeds a mean power at the loads, W} */
    public static double time(
            double capacity, double depthOfDischarge, double efficiency, double voltage, double power) {
        Physical.positive("capacity", capacity);
        Physical.positive("power", power);
        return capacity * perCharge(depthOfDischarge, efficiency, voltage) / power;
    }

    private static double perCharge(double depthOfDischarge, double efficiency, double voltage) {
        Physical.positive("depth of discharge", Physical.within("depth of discharge", depthOfDischarge, 0, 1));
        Physical.positive("efficiency", Physical.within("efficiency", efficiency, 0, 1));
        return depthOfDischarge * efficiency * Physical.positive("voltage", voltage);
    }
}
