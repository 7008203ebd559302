package org.leat.hydraulics;

/**
 * One jet.
 *
 * @param bore of its nozzle, m
 * @param diameter of the jet where it is narrowest, m
 * @param flow m³/s
 * @param head total head just upstream of the nozzle, m
 * @param velocity m/s
 * @param power kinetic, W
 */
public record NozzleJet(double bore, double diameter, double flow, double head, double velocity, double power) {}
