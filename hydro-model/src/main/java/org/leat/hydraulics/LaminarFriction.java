package org.leat.hydraulics;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Laminar friction factor (Darcy) of a round pipe: {@code f = 64 / Re}, whatever the roughness. Exact (Hagen 1839,
 * Poiseuille 1840); flow stays laminar up to Re 2300 (White, Fluid Mechanics, 6.2). Above: outside.
 */
public final class LaminarFriction {

    /** Highest Reynolds number of certain laminar flow. */
    public static final double HIGHEST_REYNOLDS = 2300;

    private LaminarFriction() {}

    /** {@return f, 1} Throws where Re is not above zero. */
    public static Answer frictionFactor(double reynolds) {
        Physical.positive("reynolds", reynolds);
        return reynolds > HIGHEST_REYNOLDS
                ? Answer.outside("64/Re", "reynolds", reynolds, 0, HIGHEST_REYNOLDS, "1")
                : Answer.of(64 / reynolds);
    }
}
