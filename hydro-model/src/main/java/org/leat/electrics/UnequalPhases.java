package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Three phases that are not alike, each 120° from the next, seen from the three leads. The EMF between two leads is
 * U_ab = √(E_a² + E_b² + E_a E_b), √3 E where both are alike; a phase wired the wrong way round counts with the opposite sign. The
 * resistance between two leads is R_ab = R_a + R_b, from which R_a = (R_ab + R_ca − R_bc)/2: of a star its phases, of a delta those of
 * the star that behaves alike.
 *
 * <p>Range: EMFs of either sign; resistances between leads that obey the triangle, else no passive three-pole gives them and an
 * argument is refused.
 *
 * <p>Source: phasors; the transformation of a delta into a star, A. E. Kennelly, Electrical World 34 (1899) 413 (from memory).
 */
public final class UnequalPhases {

    private UnequalPhases() {}

    /**
     * {@return EMF between two leads, V, of the same kind (rms or peak) as the phases'}
     *
     * @param first EMF of the first phase, V; below nil where it is wired the wrong way round
     * @param second EMF of the second phase, V
     */
    public static double between(double first, double second) {
        Physical.finite("phase EMF", first);
        Physical.finite("phase EMF", second);
        return Math.sqrt(first * first + second * second + first * second);
    }

    /**
     * {@return resistance of the phase that two of the pairs share, Ω}
     *
     * @param one of the pairs that share the phase, Ω
     * @param other of the pairs that share the phase, Ω
     * @param opposite pair, which the phase has no part in, Ω
     * @throws IllegalArgumentException if the opposite pair has more than the other two together
     */
    public static double phaseResistance(double one, double other, double opposite) {
        Physical.positive("resistance between leads", one);
        Physical.positive("resistance between leads", other);
        Physical.positive("resistance between leads", opposite);
        return Physical.notNegative("resistance of the phase", (one + other - opposite) / 2);
    }
}
