package org.leat.hydraulics;

import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * What becomes of a wave of head at the joint of two sections: with {@code B = a/(g A)}, s/m², of the section it comes through and
 * of the one beyond, {@code transmitted = 2 B'/(B + B')} of it goes on, {@code reflected = (B' − B)/(B + B')} goes back. A tank is B'
 * = 0: nothing goes on, all comes back with the sign turned. A dead end doubles it.
 *
 * <p>Range: no friction, no loss at the joint. Source: equal head and flow on both sides; Wylie and Streeter, ch. 3.
 */
public final class JointTransmission {

    private JointTransmission() {}

    /** {@return B of a section, s/m²: its rise of head over the flow stopped in it} */
    public static double impedance(double waveSpeed, double area) {
        return Physical.positive("waveSpeed", waveSpeed) / (Gravity.STANDARD * Physical.positive("area", area));
    }

    /** {@return share of a rise of head that goes on, 0 to 2} */
    public static double transmitted(double impedance, double beyond) {
        Physical.positive("impedance", impedance);
        return 2 * Physical.notNegative("beyond", beyond) / (impedance + beyond);
    }

    /** {@return share of a rise of head that goes back, −1 to 1} */
    public static double reflected(double impedance, double beyond) {
        return transmitted(impedance, beyond) - 1;
    }
}
