package org.leat.electrics;

/**
 * What a bridge did over whole periods of a time-stepped run.
 *
 * @param dcCurrent mean, A
 * @param leastDcCurrent A
 * @param greatestDcCurrent A
 * @param dcVoltage mean at the bridge output, V
 * @param greatestDcVoltage V
 * @param phaseCurrentRms of the lead that carries most, A
 * @param airGapPower W
 * @param torque mean, N·m
 * @param copperLoss in the windings, W
 * @param dcPower mean at the bridge output, W
 * @param rippleAtFrequency amplitude of the d.c. current's part at f, A: one diode
 * @param rippleAtTwice amplitude of its part at 2f, A: one phase
 * @param rippleAtSix amplitude of its part at 6f, A: a healthy bridge
 */
public record BridgeWaveform(
        double dcCurrent,
        double leastDcCurrent,
        double greatestDcCurrent,
        double dcVoltage,
        double greatestDcVoltage,
        double phaseCurrentRms,
        double airGapPower,
        double torque,
        double copperLoss,
        double dcPower,
        double rippleAtFrequency,
        double rippleAtTwice,
        double rippleAtSix) {}
