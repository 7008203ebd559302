package org.leat.electrics;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Magnetic release of a breaker, in multiples of its rated current: B holds 3 and trips at 5 times, C 5 and 10, D 10 and 20 on
 * alternating current of 50 and 60 Hz. On direct current both are √2 times higher, as the release follows the peak: B 4 to 7, C 7 to
 * 14, D 14 to 28 as makers round them (B from 4.2). (One web text has it the wrong way round.) The thermal release stays as it is.
 *
 * <p>Above 60 Hz the level rises: 1.1, 1.2, 1.5 at 100, 200, 400 Hz, straight between; above 400 Hz and below 16.7 Hz {@link
 * Answer.Outside}. No text states the breaking capacity there, nor that of polarity-bound breakers when the current turns. Source: IEC
 * 60898-1 and makers' pages on direct current (read), on frequency from memory. {@link BreakerTrip} holds the upper limits
 * of IEC 60898-2, which are no lower.
 */
public enum MagneticRelease {
    /** 3 to 5 times. */
    B(3, 5, 4, 7),
    /** 5 to 10 times. */
    C(5, 10, 7, 14),
    /** 10 to 20 times. */
    D(10, 20, 14, 28);

    /** How much higher the level lies on direct current: the peak of a sine over its rms. */
    public static final double DIRECT = Math.sqrt(2);

    /** Setting of an adjustable release over the direct current that it is to trip at, as a maker rounds 1/√2. */
    public static final double SETTING = 0.7;

    private static final double[] FREQUENCY = {16.7, 60, 100, 200, 400};
    private static final double[] FACTOR = {1, 1, 1.1, 1.2, 1.5};

    private final double holds;
    private final double trips;
    private final double holdsDirect;
    private final double tripsDirect;

    MagneticRelease(double holds, double trips, double holdsDirect, double tripsDirect) {
        this.holds = holds;
        this.trips = trips;
        this.holdsDirect = holdsDirect;
        this.tripsDirect = tripsDirect;
    }

    /** {@return greatest multiple at which it surely does not trip at once, on 50 and 60 Hz} */
    public double holds() {
        return holds;
    }

    /** {@return multiple from which it surely trips at once, on 50 and 60 Hz} */
    public double trips() {
        return trips;
    }

    /** {@return greatest multiple at which it surely does not trip at once, on direct current} */
    public double holdsDirect() {
        return holdsDirect;
    }

    /** {@return multiple from which it surely trips at once, on direct current} */
    public double tripsDirect() {
        return tripsDirect;
    }

    /** {@return factor on both multiples at a frequency, Hz} */
    public static Answer atFrequency(double frequency) {
        Physical.positive("frequency", frequency);
        int last = FREQUENCY.length - 1;
        if (frequency < FREQUENCY[0] || frequency > FREQUENCY[last]) {
            return Answer.outside(
                    "magnetic release by frequency", "frequency", frequency, FREQUENCY[0], FREQUENCY[last], "Hz");
        }
        int i = 1;
        while (frequency > FREQUENCY[i]) {
            i++;
        }
        double share = (frequency - FREQUENCY[i - 1]) / (FREQUENCY[i] - FREQUENCY[i - 1]);
        return Answer.of(FACTOR[i - 1] + share * (FACTOR[i] - FACTOR[i - 1]));
    }
}
