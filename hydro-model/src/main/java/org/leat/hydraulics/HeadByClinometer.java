package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Head by sighting angles along the fall: {@code H = Σ L sin α ± √Σ (L cos α u)²}, L distance along the slope m, α angle above
 * the horizontal rad, u uncertainty of one angle rad. Trigonometry; exact. The instrument's zero error is common to all legs and
 * not in this: sight each leg both ways and take the mean.
 */
public final class HeadByClinometer {

    private HeadByClinometer() {}

    /**
     * {@return head, m}
     *
     * @param anglePlusMinus uncertainty of one angle at 95 %, rad
     * @param distances along the slope, m
     * @param angles one for each, rad, -π/2 to π/2
     */
    public static Estimate head(double anglePlusMinus, double[] distances, double[] angles) {
        if (distances.length == 0 || distances.length != angles.length) {
            throw new IllegalArgumentException(distances.length + " distances for " + angles.length + " angles");
        }
        Physical.notNegative("anglePlusMinus", anglePlusMinus);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < angles.length; i++) {
            Physical.within("angle", angles[i], -Math.PI / 2, Math.PI / 2);
            sum += Physical.positive("distance", distances[i]) * Math.sin(angles[i]);
            double part = distances[i] * Math.cos(angles[i]) * anglePlusMinus;
            squares += part * part;
        }
        return Estimate.of(sum, Math.sqrt(squares));
    }
}
