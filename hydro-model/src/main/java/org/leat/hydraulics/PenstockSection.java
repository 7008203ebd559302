package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * A length of pipe of one bore, as friction sees it.
 *
 * @param length m, above zero
 * @param bore inside diameter, m, above zero
 * @param roughness sand-grain roughness, m, not below zero
 * @param lossCoefficient ΣK of its entrance and fittings on its own bore, not below zero
 */
public record PenstockSection(double length, double bore, double roughness, double lossCoefficient) {
    public PenstockSection {
        Physical.positive("length", length);
        Physical.positive("bore", bore);
        Physical.notNegative("roughness", roughness);
        Physical.notNegative("lossCoefficient", lossCoefficient);
    }

    /** {@return area of the bore, m²} */
    public double area() {
        return Math.PI / 4 * bore * bore;
    }
}
