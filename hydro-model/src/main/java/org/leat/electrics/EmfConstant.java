package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Peak line EMF over mechanical angular speed (V·s) from whatever was measured. Sine EMF is assumed: an
 * average-responding meter on a trapezoidal EMF reads wrong by up to about 5 % (common practice). Rpm per volt is mostly
 * per <em>peak</em> line volt, but sellers also quote rms: who calls must know which.
 *
 * <p>Source: definitions (E_LL,peak = √2 E_LL,rms = √3 E_phase,peak).
 */
public final class EmfConstant {

    private static final double ROOT2 = Math.sqrt(2);
    private static final double ROOT3 = Math.sqrt(3);

    private EmfConstant() {}

    /** {@return from peak volts between two leads at an angular speed (rad/s), V·s} */
    public static double fromLinePeak(double volts, double speed) {
        return Physical.positive("voltage", volts) / Physical.positive("speed", speed);
    }

    /** {@return from rms volts between two leads at an angular speed (rad/s), V·s} */
    public static double fromLineRms(double volts, double speed) {
        return fromLinePeak(ROOT2 * volts, speed);
    }

    /** {@return from peak volts between a lead and the star point, V·s} */
    public static double fromPhasePeak(double volts, double speed) {
        return fromLinePeak(ROOT3 * volts, speed);
    }

    /** {@return from rms volts between a lead and the star point, V·s} */
    public static double fromPhaseRms(double volts, double speed) {
        return fromLinePeak(ROOT3 * ROOT2 * volts, speed);
    }

    /**
     * {@return from the d.c. volts behind an unloaded bridge with a small capacitor, which shows the peak, V·s}
     *
     * @param volts at the output
     * @param speed rad/s
     * @param diodeDrop of one diode at the meter's tiny current, V
     */
    public static double fromBridgeWithCapacitor(double volts, double speed, double diodeDrop) {
        return fromLinePeak(volts + 2 * diodeDrop, speed);
    }

    /**
     * {@return from the d.c. volts behind an unloaded bridge without capacitor, where a meter shows the mean, V·s}
     *
     * @param volts at the output
     * @param speed rad/s
     * @param diodeDrop of one diode at the meter's tiny current, V
     */
    public static double fromBridgeMean(double volts, double speed, double diodeDrop) {
        return fromLinePeak((volts + 2 * diodeDrop) * Math.PI / 3, speed);
    }

    /** {@return from angular speed per peak line volt, rad/(s·V)} */
    public static double fromSpeedPerPeakVolt(double speedPerVolt) {
        return 1 / Physical.positive("speed per volt", speedPerVolt);
    }

    /** {@return from angular speed per rms line volt, rad/(s·V)} */
    public static double fromSpeedPerRmsVolt(double speedPerVolt) {
        return ROOT2 / Physical.positive("speed per volt", speedPerVolt);
    }
}
