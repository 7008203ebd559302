package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Rise of head before the nozzles when part of their area is lost at once: {@code ΔH = a (V0 − V)/g} with {@code V = τ V0 √(1 +
 * ΔH/H0)}, m; working head H0 [m], wave speed a [m/s], velocity V0 [m/s], share of the area left τ. It is less than the lost share
 * of {@link Joukowsky}, as the higher head drives more through what is left.
 *
 * <p>Source: Allievi (1902), first link of the chain; exact until the wave returns. Friction adds up to its head: line packing.
 */
public final class PartialStop {

    private PartialStop() {}

    /** {@return first rise of head, m} */
    public static double head(double workingHead, double waveSpeed, double velocity, double shareLeft) {
        Physical.positive("workingHead", workingHead);
        double tau = Physical.within("shareLeft", shareLeft, 0, 1);
        double full = Joukowsky.head(waveSpeed, velocity);
        // h = √(1 + ΔH/H0) solves h² + (full τ/H0) h − (1 + full/H0) = 0
        double half = full * tau / workingHead / 2;
        double h = -half + Math.sqrt(half * half + 1 + full / workingHead);
        return full * (1 - tau * h);
    }
}
