package org.leat.plant.solved;

import org.apiguardian.api.API;

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
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record SectionFlow(
        String section,
        double velocity,
        double reynolds,
        double frictionFactor,
        double frictionLoss,
        double fittingsLoss) {}
