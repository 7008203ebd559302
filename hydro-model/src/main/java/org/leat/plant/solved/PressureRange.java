package org.leat.plant.solved;

import org.apiguardian.api.API;

/**
 * Highest and lowest pressure at one point, or in one section, of the penstock while the flow changes.
 *
 * @param at {@code intake}, or the name of a section
 * @param distance along the pipe from the intake, m
 * @param elevation above the nozzle axis, m
 * @param highest above atmosphere, Pa
 * @param lowest above atmosphere, Pa; below zero under suction
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record PressureRange(String at, double distance, double elevation, double highest, double lowest) {}
