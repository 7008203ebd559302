package org.leat.hydraulics;

import java.util.function.DoubleUnaryOperator;
import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Head at the nozzle of a single pipe without friction while its opening changes, by the chain of waves: the wave F that
 * leaves at t returns from the tank at t + 2 L/a with its sign changed, so {@code H = Hr + a (V0 − V)/g − 2 F'}, {@code F = a (V0 −
 * V)/g − F'}, {@code V = τ V0 √(H/Hr)}, F' the wave of one return time ago.
 *
 * <p>Source: Allievi (1902); Parmakian, Waterhammer Analysis. Exact without friction, at any instant; an independent check of
 * {@link Characteristics}. A negative head where the nozzle is open lets air in and is outside the chain: the head is then
 * given as 0.
 */
public final class Allievi {

    private Allievi() {}

    /**
     * {@return highest head at the nozzle, m, up to a time}
     *
     * @param tankHead Hr, m
     * @param waveSpeed a, m/s
     * @param velocity V0 in steady flow, m/s
     * @param length L, m
     * @param opening τ at a time in s after the start: open area over area in steady flow
     * @param duration s
     * @param phases number of chains started within one return time
     */
    public static double highestHead(
            double tankHead,
            double waveSpeed,
            double velocity,
            double length,
            DoubleUnaryOperator opening,
            double duration,
            int phases) {
        Physical.positive("tankHead", tankHead);
        double returnTime = 2 * Physical.positive("length", length) / Physical.positive("waveSpeed", waveSpeed);
        double impedance = waveSpeed / Gravity.STANDARD;
        double highest = tankHead;
        for (int phase = 1; phase <= phases; phase++) {
            double wave = 0;
            for (double t = returnTime * phase / phases; t <= duration; t += returnTime) {
                double arriving = tankHead + impedance * velocity - 2 * wave;
                double through = throughNozzle(arriving, impedance, opening.applyAsDouble(t) * velocity, tankHead);
                highest = Math.max(highest, arriving - impedance * through);
                wave = impedance * (velocity - through) - wave;
            }
        }
        return highest;
    }

    /** Velocity V with V = full √(H/Hr) and H = arriving − impedance V. */
    private static double throughNozzle(double arriving, double impedance, double full, double tankHead) {
        if (full == 0) {
            return 0;
        }
        if (arriving <= 0) {
            return arriving / impedance;
        }
        double c = full * full / tankHead;
        double half = c * impedance / 2;
        return c * arriving / (half + Math.sqrt(half * half + c * arriving));
    }
}
