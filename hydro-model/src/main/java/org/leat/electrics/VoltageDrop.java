package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Voltage drop and loss of a run. Direct current and single phase: ΔV = 2 l r I, P = 2 l r I². Three phases, between two
 * leads: ΔV = √3 l r I, P = 3 l r I², with I the rms phase current; before a bridge the run's resistance is simply added to
 * the alternator's. The reactance of a run of some tens of metres is small against the alternator's and left out.
 *
 * <p>Symbols: l length one way, m; r resistance of one core at its temperature, Ω/m; I current, A. Valid for all.
 * Source: Ohm's law; IEC 60364-5-52:2009, annex G (with reactance nil).
 */
public final class VoltageDrop {

    private static final double SQRT3 = Math.sqrt(3);

    private VoltageDrop() {}

    /** {@return resistance of one core of a run, Ω, of cores in parallel} */
    public static double core(double length, double resistance, int parallel) {
        Physical.notNegative("length", length);
        Physical.notNegative("resistance", resistance);
        Physical.positive("cores in parallel", parallel);
        return length * resistance / parallel;
    }

    /** {@return drop over both cores, V} */
    public static double direct(double coreResistance, double current) {
        return 2 * ohm(coreResistance) * Physical.finite("current", current);
    }

    /** {@return loss in both cores, W} */
    public static double directLoss(double coreResistance, double current) {
        return 2 * ohm(coreResistance) * square(current);
    }

    /** {@return drop between two leads of three, rms, V} */
    public static double threePhase(double coreResistance, double phaseCurrent) {
        return SQRT3 * ohm(coreResistance) * Physical.finite("phase current", phaseCurrent);
    }

    /** {@return loss in all three cores, W} */
    public static double threePhaseLoss(double coreResistance, double phaseCurrent) {
        return 3 * ohm(coreResistance) * square(phaseCurrent);
    }

    private static double ohm(double resistance) {
        return Physical.notNegative("core resistance", resistance);
    }

    private static double square(double current) {
        return Physical.finite("current", current) * current;
    }
}
