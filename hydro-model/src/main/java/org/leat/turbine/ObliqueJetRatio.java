package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Bucket speed over jet speed at which a jet under an angle to the wheel's plane gives most power: the maximum of
 * {@code phi [(cos a - phi) + kappa w]} with {@code w = hypot(cos a - phi, sin a)}.
 *
 * <p>Symbols: {@code phi} bucket speed over jet speed [1]; {@code a} jet angle to the wheel's plane [rad];
 * {@code kappa = k cos b2} [1], {@code k} relative speed out over in, {@code b2} exit angle from the backward tangent;
 * {@code w} relative speed over jet speed [1]. The axial part of the relative velocity is turned backward too, so that
 * the best ratio is above {@code cos(a)/2}: near 0.53 for 20 degrees. Straight jet: exactly 0.5.
 *
 * <p>Range: {@code a} from 0 to 1.2 rad, {@code kappa} from 0 to 1; anything else is refused. Source: Euler's turbine
 * equation with the velocity triangles of an oblique jet, any text on turbomachinery.
 */
public final class ObliqueJetRatio {

    private ObliqueJetRatio() {}

    /** {@return the best ratio [1]} */
    public static double best(double jetAngle, double returnFactor) {
        Physical.within("jetAngle", jetAngle, 0, 1.2);
        Physical.within("returnFactor", returnFactor, 0, 1);
        if (jetAngle == 0) {
            return 0.5;
        }
        double cos = Math.cos(jetAngle);
        double sin = Math.sin(jetAngle);
        double low = 0;
        double high = 2;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            if (slope(middle, cos, sin, returnFactor) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /** {@return power over that of the flow rho Q Vj squared [1] at a ratio, all of the relative velocity being turned} */
    public static double power(double ratio, double jetAngle, double returnFactor) {
        double along = Math.cos(jetAngle) - ratio;
        return ratio * (along + returnFactor * Math.hypot(along, Math.sin(jetAngle)));
    }

    private static double slope(double ratio, double cos, double sin, double returnFactor) {
        double along = cos - ratio;
        double relative = Math.hypot(along, sin);
        double turned = relative > 0 ? relative - ratio * along / relative : 0;
        return cos - 2 * ratio + returnFactor * turned;
    }
}
