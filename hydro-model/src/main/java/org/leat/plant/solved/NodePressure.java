package org.leat.plant.solved;

import org.apiguardian.api.API;

/**
 * Pressure at one point of the penstock.
 *
 * @param at {@code intake}, or the name of the section that ends here
 * @param distance along the pipe from the intake, m
 * @param elevation above the nozzle axis, m
 * @param pressure above atmosphere, Pa; below zero where the point lies above the hydraulic grade line
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record NodePressure(String at, double distance, double elevation, double pressure) {}
