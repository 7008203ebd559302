package org.leat.turbine;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Load cycles until a crack, by a straight S-N line in logarithms (Basquin):
 * {@code N = Nf (Sf/S)^k}, {@code k = log Nf/log(Su/Sf)}.
 *
 * <p>Symbols: {@code S} stress that comes and goes, {@code Sf} fatigue strength at {@code Nf} cycles, {@code Su} static
 * strength [Pa], all in the same state (wet, warm, across layers). The line runs from the static strength at one cycle;
 * its slope {@code k} is 8 to 13 for printed plastic to metal. Range: {@code S} from zero to {@code Su}; a stress above it
 * breaks at once: outside. Lives past {@link #MOST} are told as that. Beyond {@code Nf} the same line is drawn on, which is safe for metals with a knee. Source:
 * Basquin's law, any text on fatigue; the point at one cycle is common practice. Scatter is a factor of ten or more.
 */
public final class CyclesToCrack {

    /** Past this many cycles no number is told [1]. */
    public static final double MOST = 1e15;

    private CyclesToCrack() {}

    /** {@return cycles to a crack, at most {@link #MOST} [1], or what is outside} */
    public static Answer of(double stress, double staticStrength, double fatigueStrength, double atCycles) {
        Physical.positive("stress", stress);
        Physical.positive("staticStrength", staticStrength);
        Physical.positive("fatigueStrength", fatigueStrength);
        Physical.positive("atCycles", atCycles);
        Physical.within("fatigueStrength over static strength", fatigueStrength / staticStrength, 0, 0.999);
        if (stress > staticStrength) {
            return Answer.outside("S-N line", "stress", stress, 0, staticStrength, "Pa");
        }
        double slope = Math.log(atCycles) / Math.log(staticStrength / fatigueStrength);
        return Answer.of(Math.min(MOST, atCycles * Math.pow(fatigueStrength / stress, slope)));
    }
}
