package org.leat.plant.solved;

/**
 * One jet.
 *
 * @param bore of the nozzle, m
 * @param diameter of the jet, m
 * @param flow m³/s
 * @param head total head just upstream of this nozzle, m
 * @param velocity m/s
 * @param power W
 */
public record Jet(double bore, double diameter, double flow, double head, double velocity, double power) {}
