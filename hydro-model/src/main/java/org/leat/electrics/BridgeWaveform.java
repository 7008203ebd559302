package org.leat.electrics;

/**
 * What a bridge did over whole periods of a time-stepped run.
 *
 * @param directCurrent mean, A
 * @param leastDirectCurrent A
 * @param greatestDirectCurrent A
 * @param directVoltage mean at the bridge output, V
 * @param greatestDirectVoltage V
 * @param phaseCurrentRms of the lead that carries most, A
 * @param diodeCurrent mean of the diode that carries most one way, A
 * @param airGapPower W
 * @param torque mean, N·m
 * @param copperLoss in the windings, W
 * @param directPower mean at the bridge output, W
 * @param rippleAtFrequency amplitude of the d.c. current's part at f, A: one diode
 * @param rippleAtTwice amplitude of its part at 2f, A: one phase
 * @param rippleAtSix amplitude of its part at 6f, A: a healthy bridge
 */
public record BridgeWaveform(
        double directCurrent,
        double leastDirectCurrent,
        double greatestDirectCurrent,
        double directVoltage,
        double greatestDirectVoltage,
        double phaseCurrentRms,
        double diodeCurrent,
        double airGapPower,
        double torque,
        double copperLoss,
        double directPower,
        double rippleAtFrequency,
        double rippleAtTwice,
        double rippleAtSix) {}
