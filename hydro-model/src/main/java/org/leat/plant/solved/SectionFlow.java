package org.leat.plant.solved;

/**
 * Steady flow in one section.
 *
 * @param section name
 * @param velocity in the full bore, m/s
 * @param reynolds Reynolds number
 * @param frictionFactor Darcy
 * @param frictionLoss along the filled length, m
 * @param fittingsLoss m
 */
public record SectionFlow(
        String section,
        double velocity,
        double reynolds,
        double frictionFactor,
        double frictionLoss,
        double fittingsLoss) {}
