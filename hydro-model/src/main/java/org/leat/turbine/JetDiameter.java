package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Diameter of each of several equal jets: {@code d = sqrt(4 Q/(pi z V))}. It is the jet, not the nozzle's bore.
 *
 * <p>Symbols: {@code Q} flow of all jets [m3/s]; {@code z} their number; {@code V} jet velocity [m/s]. Valid for all
 * physical inputs. Source: continuity.
 */
public final class JetDiameter {

    private JetDiameter() {}

    /** {@return jet diameter [m]} */
    public static double of(double flow, int jets, double jetVelocity) {
        Physical.positive("flow", flow);
        Physical.positive("jets", jets);
        Physical.positive("jetVelocity", jetVelocity);
        return Math.sqrt(4 * flow / (Math.PI * jets * jetVelocity));
    }
}
