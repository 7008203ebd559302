package org.leat.electrics;

import org.leat.law.Answer;

/**
 * Bridge with a smooth direct current (a choke behind it): textbook mean values. Not for a battery, where its current is
 * off by −19 to +3 %; there use {@link ThreeModeBridge}.
 *
 * <p>V_d = (3√2/π) E_LL − (3/π) X I − 2 R I − 2 V_F; without overlap diode mean I/3, diode rms I/√3, line rms √(2/3) I,
 * its fundamental (√6/π) I. Holds while the commutation overlap stays below 60°.
 *
 * <p>Source: Mohan, Undeland, Robbins, Power Electronics, ch. 5; Rashid, Power Electronics, ch. 3 (from memory).
 */
public final class SmoothCurrentBridge {

    private static final double ROOT2 = Math.sqrt(2);

    private SmoothCurrentBridge() {}

    /** {@return ideal mean d.c. voltage, (3√2/π) E_LL, V} */
    public static double idealVoltage(double lineRms) {
        return 3 * ROOT2 / Math.PI * lineRms;
    }

    /** {@return ideal rms d.c. voltage of a bare bridge, E_LL,peak √(1/2 + 3√3/(4π)), V} */
    public static double idealRmsVoltage(double lineRms) {
        return ROOT2 * lineRms * Math.sqrt(0.5 + 3 * Math.sqrt(3) / (4 * Math.PI));
    }

    /** {@return mean loss of d.c. voltage by the overlap, 3 X I/π, V} */
    public static double commutationDrop(double reactance, double current) {
        return 3 * reactance * current / Math.PI;
    }

    /** {@return mean d.c. voltage under load, V} */
    public static double voltage(
            double lineRms, double reactance, double resistance, double diodeDrop, double current) {
        return idealVoltage(lineRms) - commutationDrop(reactance, current) - 2 * resistance * current - 2 * diodeDrop;
    }

    /** {@return commutation overlap μ, cos μ = 1 − √2 X I/E_LL, rad} Outside above 60°, where three diodes always conduct. */
    public static Answer overlap(double lineRms, double reactance, double current) {
        double cosine = 1 - ROOT2 * reactance * current / lineRms;
        return cosine >= 0.5
                ? Answer.of(Math.acos(cosine))
                : Answer.outside("commutation overlap", "cos μ", cosine, 0.5, 1, "1");
    }

    /** {@return greatest instant of the current of a resistor, which follows the voltage, for a mean current, A} */
    public static double peakIntoResistor(double current) {
        return Math.PI / 3 * current;
    }

    /** {@return d.c. power over d.c. volt-amperes of a resistor, (V_mean/V_rms)²} */
    public static double rectificationEfficiency() {
        double ratio = idealVoltage(1) / idealRmsVoltage(1);
        return ratio * ratio;
    }

    /** {@return ripple factor of the ideal voltage, √(V_rms²/V_mean² − 1)} */
    public static double rippleFactor() {
        double ratio = idealRmsVoltage(1) / idealVoltage(1);
        return Math.sqrt(ratio * ratio - 1);
    }

    /** {@return rms current of one lead with a stiff d.c. voltage and all phases conducting, near π/(3√2) I, A} */
    public static double lineRmsOnStiffVoltage(double current) {
        return Math.PI / (3 * ROOT2) * current;
    }

    /** {@return mean current of one diode, A} */
    public static double diodeMean(double current) {
        return current / 3;
    }

    /** {@return rms current of one diode without overlap, A} */
    public static double diodeRms(double current) {
        return current / Math.sqrt(3);
    }

    /** {@return rms current of one lead without overlap, A} */
    public static double lineRms(double current) {
        return Math.sqrt(2.0 / 3) * current;
    }

    /** {@return rms of the fundamental of one lead's current without overlap, A} */
    public static double lineFundamentalRms(double current) {
        return Math.sqrt(6) / Math.PI * current;
    }
}
