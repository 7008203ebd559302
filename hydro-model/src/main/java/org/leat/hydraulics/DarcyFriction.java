package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Friction factor (Darcy) over the whole range: 64/Re to Re 2300, {@link ColebrookWhite} from Re 4000, and between them
 * the straight line in Re that joins the two. Nature does not settle f there (laminar or turbulent, as it pleases): the
 * line is ours, chosen because it never falls and makes the loss rise with the flow without a jump, so that every flow
 * has one loss and every loss one flow. {@link #unsettled} says when an answer rests on it; {@link #lowest} and {@link
 * #highest} give the band.
 *
 * <p>Sources of the parts: Hagen-Poiseuille; Colebrook 1939. Limits 2300 and 4000: White, Fluid Mechanics, 6.2 and 6.6.
 */
public final class DarcyFriction {

    /** Lowest Reynolds number of settled turbulent flow. */
    public static final double LOWEST_TURBULENT_REYNOLDS = 4000;

    private DarcyFriction() {}

    /**
     * {@return the friction factor, 1}
     *
     * @param reynolds Re, above zero
     * @param relativeRoughness k/D, not below zero
     */
    public static double frictionFactor(double reynolds, double relativeRoughness) {
        return solve(
                Physical.positive("reynolds", reynolds), Physical.notNegative("relativeRoughness", relativeRoughness));
    }

    /** {@return whether flow may be laminar or turbulent at this Reynolds number} */
    public static boolean unsettled(double reynolds) {
        return reynolds > LaminarFriction.HIGHEST_REYNOLDS && reynolds < LOWEST_TURBULENT_REYNOLDS;
    }

    /** {@return the least friction factor possible, 1: laminar where that may be} */
    public static double lowest(double reynolds, double relativeRoughness) {
        return unsettled(reynolds) ? 64 / reynolds : frictionFactor(reynolds, relativeRoughness);
    }

    /** {@return the greatest friction factor possible, 1: turbulent where that may be} */
    public static double highest(double reynolds, double relativeRoughness) {
        return unsettled(reynolds)
                ? ColebrookWhite.frictionFactor(reynolds, relativeRoughness)
                : frictionFactor(reynolds, relativeRoughness);
    }

    /** The same without looking at the arguments, for inner loops. */
    static double solve(double reynolds, double relativeRoughness) {
        if (reynolds <= LaminarFriction.HIGHEST_REYNOLDS) {
            return 64 / reynolds;
        }
        if (reynolds >= LOWEST_TURBULENT_REYNOLDS) {
            return ColebrookWhite.solve(reynolds, relativeRoughness);
        }
        double low = 64 / LaminarFriction.HIGHEST_REYNOLDS;
        double high = ColebrookWhite.solve(LOWEST_TURBULENT_REYNOLDS, relativeRoughness);
        double share = (reynolds - LaminarFriction.HIGHEST_REYNOLDS)
                / (LOWEST_TURBULENT_REYNOLDS - LaminarFriction.HIGHEST_REYNOLDS);
        return low + (high - low) * share;
    }
}
