package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Direct current of an inverter: I = P/(η V), greatest at the lowest battery voltage. A single-phase inverter draws it in pulses of
 * twice the output's frequency: i = I (1 − cos 2ωt), whose rms is √1.5 = 1.22 I where no filter smooths it; fuses and cables at the
 * battery heat by the rms.
 *
 * <p>Source: energy balance; rms of a raised sine.
 */
public final class InverterCurrent {

    private static final double RAISED_SINE = Math.sqrt(1.5);

    private InverterCurrent() {}

    /** {@return mean input current, A, for an output, W, at a battery voltage, V} */
    public static double direct(double outputPower, double voltage, double efficiency) {
        Physical.notNegative("output power", outputPower);
        Physical.positive("voltage", voltage);
        Physical.positive("efficiency", Physical.within("efficiency", efficiency, 0, 1));
        return outputPower / (voltage * efficiency);
    }

    /** {@return greatest rms of the input current, A, of a single-phase inverter without filter} */
    public static double singlePhaseRms(double direct) {
        return RAISED_SINE * Physical.notNegative("direct current", direct);
    }
}
