package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Voltages, V, up to which live parts of a circuit with safety separation (SELV, with conditions PELV) may be left bare: dry,
 * without contact over a large area of the body, 25 V a.c. rms and 60 V ripple-free d.c.; everywhere else, so beside a turbine,
 * 12 V a.c. and 30 V d.c. Above 50 V a.c. or 120 V d.c. a circuit is not of extra-low voltage at all.
 *
 * <p>Ripple-free: rms ripple at most 10 % of the d.c. component, with a peak of at most 140 V at 120 V and 70 V at 60 V.
 * What counts is the highest voltage of any case, runaway among them, not the nominal one. Leads before a bridge are a.c.
 *
 * <p>Source: IEC 60364-4-41, 414.1.1 and 414.4.5 (dry values and bands read in reproductions, wet values from memory and read
 * in IEC 60598-1, 8.2.3). Local codes go before.
 */
public final class TouchVoltageLimits {

    /** Upper limit of extra-low voltage, a.c. rms. */
    public static final double EXTRA_LOW_ALTERNATING = 50;

    /** Upper limit of extra-low voltage, ripple-free d.c. */
    public static final double EXTRA_LOW_DIRECT = 120;

    /** Greatest rms ripple over the d.c. component of a ripple-free voltage. */
    public static final double RIPPLE = 0.1;

    /** How far a voltage reaches. */
    public enum Band {
        /** may be touched wet. */
        BARE_WET,
        /** may be touched dry only. */
        BARE_DRY,
        /** extra-low voltage, to be covered. */
        COVERED,
        /** not extra-low voltage: all of the rules for low voltage hold, and a qualified person is needed. */
        LOW_VOLTAGE
    }

    private TouchVoltageLimits() {}

    /** {@return greatest a.c. voltage of bare parts, rms} */
    public static double alternating(boolean wet) {
        return wet ? 12 : 25;
    }

    /** {@return greatest ripple-free d.c. voltage of bare parts} */
    public static double direct(boolean wet) {
        return wet ? 30 : 60;
    }

    /** {@return greatest peak of a voltage that counts as ripple-free at a limit of 60 V or 120 V} */
    public static double peak(double directLimit) {
        Physical.within("d.c. limit", directLimit, 60, 120);
        return directLimit * 140 / 120;
    }

    /** {@return how far a ripple-free d.c. voltage reaches} */
    public static Band ofDirect(double voltage) {
        return band(voltage, direct(true), direct(false), EXTRA_LOW_DIRECT);
    }

    /** {@return how far an a.c. voltage, rms, reaches} */
    public static Band ofAlternating(double voltage) {
        return band(voltage, alternating(true), alternating(false), EXTRA_LOW_ALTERNATING);
    }

    private static Band band(double voltage, double wet, double dry, double extraLow) {
        Physical.notNegative("voltage", voltage);
        return voltage <= wet
                ? Band.BARE_WET
                : voltage <= dry ? Band.BARE_DRY : voltage <= extraLow ? Band.COVERED : Band.LOW_VOLTAGE;
    }
}
