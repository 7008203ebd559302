package org.leat.hydraulics;

import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * A length of penstock of one bore, as a surge sees it.
 *
 * @param length L, m
 * @param bore D, m
 * @param waveSpeed a, m/s
 * @param frictionFactor Darcy f at the steady flow, kept while the flow changes
 * @param fromElevation of the upper end above the nozzle axis, m
 * @param toElevation of the lower end above the nozzle axis, m
 */
public record SurgeSection(
        double length, double bore, double waveSpeed, double frictionFactor, double fromElevation, double toElevation) {

    public SurgeSection {
        Physical.positive("length", length);
        Physical.positive("bore", bore);
        Physical.positive("waveSpeed", waveSpeed);
        Physical.notNegative("frictionFactor", frictionFactor);
        Physical.finite("fromElevation", fromElevation);
        Physical.finite("toElevation", toElevation);
    }

    /** {@return the section with the losses of its fittings spread along it: {@code f + ΣK D/L}} */
    public SurgeSection withFittings(double lossCoefficient) {
        Physical.notNegative("lossCoefficient", lossCoefficient);
        double factor = frictionFactor + lossCoefficient * bore / length;
        return new SurgeSection(length, bore, waveSpeed, factor, fromElevation, toElevation);
    }

    /** {@return area of the bore, m²} */
    public double area() {
        return Math.PI / 4 * bore * bore;
    }

    /** {@return head lost over flow squared, s²/m⁵} */
    public double resistance() {
        return frictionFactor * length / (2 * Gravity.STANDARD * bore * area() * area());
    }

    /** {@return time a wave takes from end to end, s} */
    public double travelTime() {
        return length / waveSpeed;
    }
}
