package org.leat.electrics;

/**
 * Alternator, bridge and battery at one speed. Every watt is told: air-gap power is the sum of winding, lead and diode
 * loss and d.c. power. Iron and friction losses are not in it; see {@link IronLoss}.
 *
 * @param speed mechanical angular speed, rad/s
 * @param directCurrent mean, into the bus, A
 * @param directVoltage mean, at the bridge output, V
 * @param phaseCurrentRms of one lead, A
 * @param airGapPower electric power made by the EMF, W
 * @param torque air-gap power over speed, N·m
 * @param copperLoss in the three windings, W
 * @param leadLoss in the three leads from alternator to bridge, W
 * @param diodeLoss in the bridge, W
 * @param directPower at the bridge output, mean of voltage times current, W
 * @param mode how the diodes share the current
 */
public record BridgeOperatingPoint(
        double speed,
        double directCurrent,
        double directVoltage,
        double phaseCurrentRms,
        double airGapPower,
        double torque,
        double copperLoss,
        double leadLoss,
        double diodeLoss,
        double directPower,
        ConductionMode mode) {}
