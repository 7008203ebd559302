package org.leat.hydraulics;

import org.leat.law.Answer;
import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Thin-plate V-notch: {@code Q = Ce (8/15) tan(θ/2) √(2g) (h + kh)^2.5}, h head above the notch m, θ its angle. Kindsvater and
 * Shen, in ISO 1438:2017, clause 10. The standard draws Ce and kh of a fully contracted notch as curves against θ; the
 * polynomials here are a fit of those curves in common use, from memory. Against the values read from the curves (90°: 0.578 and
 * 0.85 mm; 60°: 0.577 and 1.2 mm; 28°: 0.586 and 2.2 mm) the flow differs by 0.1, 0.1 and 0.31 %.
 *
 * <p>Range, fully contracted: θ 20 to 100°, h from 0.06 m, h/p to 0.35, p from 0.45 m, h/B to 0.2 (p notch above bed, B channel
 * width). Partly contracted notches need the standard's surface of Ce: outside.
 */
public final class KindsvaterShen {

    /** Relative uncertainty of Ce of a fully contracted notch at 95 %, 1; ISO 1438, uncertainty clause. */
    public static final double COEFFICIENT_UNCERTAINTY = 0.01;

    private static final String LAW = "ISO 1438 V-notch, fully contracted";

    private KindsvaterShen() {}

    /** {@return flow with coefficients given, m³/s; θ in rad, h and kh in m; no range is judged} */
    public static double flow(double angle, double head, double coefficient, double headCorrection) {
        Physical.within("angle", angle, 0, Math.PI);
        double effective = Physical.notNegative("head", head) + headCorrection;
        return coefficient
                * (8.0 / 15)
                * Math.tan(angle / 2)
                * Math.sqrt(2 * Gravity.STANDARD)
                * effective
                * effective
                * Math.sqrt(effective);
    }

    /**
     * {@return flow of a fully contracted notch, m³/s; or which measure is outside the standard}
     *
     * @param angle θ, rad
     * @param head h, m
     * @param crestHeight p, notch above the channel's bed, m
     * @param channelWidth B, m
     */
    public static Answer fullyContracted(double angle, double head, double crestHeight, double channelWidth) {
        double degrees = Math.toDegrees(angle);
        if (!(degrees >= 20 - 1e-9 && degrees <= 100 + 1e-9)) {
            return Answer.outside(LAW, "angle", angle, Math.toRadians(20), Math.toRadians(100), "rad");
        }
        if (!(head >= 0.06)) {
            return Answer.below(LAW, "head", head, 0.06, "m");
        }
        if (!(crestHeight >= 0.45)) {
            return Answer.below(LAW, "crestHeight", crestHeight, 0.45, "m");
        }
        if (!(head / crestHeight <= 0.35)) {
            return Answer.outside(LAW, "head/crestHeight", head / crestHeight, 0, 0.35, "1");
        }
        if (!(head / channelWidth <= 0.2)) {
            return Answer.outside(LAW, "head/channelWidth", head / channelWidth, 0, 0.2, "1");
        }
        return Answer.of(flow(angle, head, coefficient(degrees), headCorrection(degrees)));
    }

    private static double coefficient(double degrees) {
        return 0.607165052 + degrees * (-8.74466963e-4 + degrees * 6.10393334e-6);
    }

    private static double headCorrection(double degrees) {
        double feet = 0.0144902648 + degrees * (-3.3955535e-4 + degrees * (3.29819003e-6 - degrees * 1.06215442e-8));
        return 0.3048 * feet;
    }

    /** {@return relative uncertainty of the flow, {@code √(uC² + uTan² + (2.5 uh)²)}; all relative and at 95 %, 1} */
    public static double relativeUncertainty(double coefficient, double tangent, double head) {
        return Uncertainty.rootSumSquare(coefficient, tangent, 2.5 * head);
    }
}
