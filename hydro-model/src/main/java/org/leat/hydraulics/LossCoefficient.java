package org.leat.hydraulics;

import org.leat.law.Answer;
import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Local losses {@code h = K V²/(2g)} that a formula gives. K belongs to one bore: say which, and carry it with {@link
 * #onBore}. Tables of fittings live in the catalogue.
 */
public final class LossCoefficient {

    private LossCoefficient() {}

    /**
     * {@return K carried to another bore: {@code K (to/from)^4}} Continuity; exact.
     *
     * @param from bore that K belongs to, m
     * @param to bore wished, m
     */
    public static double onBore(double lossCoefficient, double from, double to) {
        double ratio = Physical.positive("to", to) / Physical.positive("from", from);
        return lossCoefficient * ratio * ratio * ratio * ratio;
    }

    /**
     * {@return K of a sudden enlargement on the smaller bore: {@code (1 - A1/A2)²}} Borda-Carnot, momentum balance.
     *
     * @param smallArea A1 upstream, m²
     * @param largeArea A2 downstream, m²; not below A1
     */
    public static double suddenEnlargement(double smallArea, double largeArea) {
        double share = Physical.positive("smallArea", smallArea) / Physical.positive("largeArea", largeArea);
        Physical.within("smallArea/largeArea", share, 0, 1);
        return (1 - share) * (1 - share);
    }

    /**
     * {@return K of a gradual enlargement on the smaller bore: {@code 2.6 sin(θ/2) (1 - β²)²} to 45°, {@code (1 - β²)²} above, as
     * sudden} Crane TP-410, appendix A, formulas 3 and 4 (from memory); β small bore over large.
     *
     * @param smallBore m, not above the large one
     * @param largeBore m
     * @param includedAngle θ of the cone, rad; outside where not in 0 to π
     */
    public static Answer gradualEnlargement(double smallBore, double largeBore, double includedAngle) {
        if (!(includedAngle >= 0 && includedAngle <= Math.PI)) {
            return Answer.outside("Crane enlargement", "includedAngle", includedAngle, 0, Math.PI, "rad");
        }
        double beta = Physical.positive("smallBore", smallBore) / Physical.positive("largeBore", largeBore);
        Physical.within("smallBore/largeBore", beta, 0, 1);
        double sudden = suddenEnlargement(beta * beta, 1);
        return Answer.of(includedAngle <= Math.PI / 4 ? 2.6 * Math.sin(includedAngle / 2) * sudden : sudden);
    }

    /**
     * {@return K of a gradual contraction on the smaller bore: {@code 0.8 sin(θ/2) (1 - β²)} to 45°, {@code 0.5 √sin(θ/2) (1
     * - β²)} above} Crane TP-410, appendix A, formulas 1 and 2; β small bore over large.
     *
     * @param largeBore m
     * @param smallBore m, not above the large one
     * @param includedAngle θ of the cone, rad; outside where not in 0 to π
     */
    public static Answer gradualContraction(double largeBore, double smallBore, double includedAngle) {
        if (!(includedAngle >= 0 && includedAngle <= Math.PI)) {
            return Answer.outside("Crane contraction", "includedAngle", includedAngle, 0, Math.PI, "rad");
        }
        double beta = Physical.positive("smallBore", smallBore) / Physical.positive("largeBore", largeBore);
        Physical.within("smallBore/largeBore", beta, 0, 1);
        double sine = Math.sin(includedAngle / 2);
        double shape = includedAngle <= Math.PI / 4 ? 0.8 * sine : 0.5 * Math.sqrt(sine);
        return Answer.of(shape * (1 - beta * beta));
    }

    /**
     * {@return friction factor of fully rough flow, {@code 0.25 / log10(k/(3.7 D))²}: the fT of Crane TP-410, on which valves
     * and bends are tabled as {@code K = n fT}}
     *
     * @param relativeRoughness k/D, above zero and below 1
     */
    public static double fullyRoughFriction(double relativeRoughness) {
        Physical.within("relativeRoughness", relativeRoughness, Double.MIN_NORMAL, 1);
        double log = Math.log10(relativeRoughness / 3.7);
        return 0.25 / (log * log);
    }

    /**
     * {@return head lost over flow squared, {@code K/(2 g A²)}, m/(m³/s)²; A the area that K belongs to, m²}
     */
    public static double perFlowSquared(double lossCoefficient, double area) {
        double each = Physical.positive("area", area) * area * 2 * Gravity.STANDARD;
        return Physical.notNegative("lossCoefficient", lossCoefficient) / each;
    }
}
