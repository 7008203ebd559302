package org.leat.readings;

import java.util.Arrays;

/**
 * Alternating voltage between two leads of an alternator that feeds a bridge, as a true-rms meter shows it: a sine that the bridge
 * clips where the direct voltage and two diodes hold it, and no more than the six steps of a bridge that conducts all the time,
 * √(2/3) of that voltage. Between them the truth lies within some 5 %, which counts as an uncertainty. Source: the waveforms of the
 * six-pulse bridge.
 */
final class LeadVolts {

    /** Standard uncertainty of the shape between sine and six steps, a share: 5 % either way, any as likely. */
    static final double SHAPE = 0.05 / Math.sqrt(3);

    private static final double SIX_STEPS = Math.sqrt(2.0 / 3);

    private LeadVolts() {}

    /**
     * {@return rms, V}
     *
     * @param linePeak of the EMF between two leads, V
     * @param held direct voltage and two diodes, V
     */
    static double rms(double linePeak, double held) {
        if (linePeak <= held) {
            return linePeak / Math.sqrt(2);
        }
        double angle = Math.asin(held / linePeak);
        double square = 2
                / Math.PI
                * (linePeak * linePeak * (angle / 2 - Math.sin(2 * angle) / 4) + held * held * (Math.PI / 2 - angle));
        return Math.min(Math.sqrt(square), SIX_STEPS * held);
    }

    /** {@return the largest of several voltages less the least, over the largest} */
    static double spread(double[] volts) {
        double most = Arrays.stream(volts).max().orElse(0);
        double least = Arrays.stream(volts).min().orElse(0);
        return most > 0 ? (most - least) / most : 0;
    }
}
