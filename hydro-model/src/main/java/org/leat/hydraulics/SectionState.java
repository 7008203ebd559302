package org.leat.hydraulics;

/**
 * Steady flow in one section of a penstock.
 *
 * @param velocity in the full bore, m/s
 * @param reynolds Reynolds number
 * @param frictionFactor Darcy; zero where nothing flows
 * @param frictionLoss along the filled length, m
 * @param fittingsLoss along the filled length, m
 */
public record SectionState(
        double velocity, double reynolds, double frictionFactor, double frictionLoss, double fittingsLoss) {

    /** {@return head lost in the section, m} */
    public double loss() {
        return frictionLoss + fittingsLoss;
    }
}
