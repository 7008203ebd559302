package org.leat.hydraulics;

import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Rise of head when a flow is stopped faster than the wave returns (in less than 2 L/a): {@code ΔH = a ΔV/g}, m, with
 * wave speed a [m/s] and the velocity stopped ΔV [m/s].
 *
 * <p>Source: Joukowsky (1898); Wylie and Streeter, ch. 1. Friction adds to it while the line packs: see
 * {@link LinePacking}.
 */
public final class Joukowsky {

    private Joukowsky() {}

    /** {@return rise of head, m; a fall where the velocity grows} */
    public static double head(double waveSpeed, double velocityStopped) {
        Physical.positive("waveSpeed", waveSpeed);
        return waveSpeed * Physical.finite("velocityStopped", velocityStopped) / Gravity.STANDARD;
    }
}
