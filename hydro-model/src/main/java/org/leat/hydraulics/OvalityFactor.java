package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Share of its buckling pressure that an oval pipe keeps: {@code ((1 − x)/(1 + x)²)³}, with x the deviation of the diameter
 * from its mean over the mean. Source: PPI Handbook of PE Pipe, ch. 6. Valid to x = 0.1; a coiled pipe has 0.03 to 0.06.
 */
public final class OvalityFactor {

    private OvalityFactor() {}

    /** {@return factor, ratio} */
    public static double factor(double ovality) {
        double x = Physical.within("ovality", ovality, 0, 0.5);
        double shape = (1 - x) / ((1 + x) * (1 + x));
        return shape * shape * shape;
    }
}
