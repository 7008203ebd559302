package org.leat.plant.solved;

import org.apiguardian.api.API;

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
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Jet(double bore, double diameter, double flow, double head, double velocity, double power) {}
