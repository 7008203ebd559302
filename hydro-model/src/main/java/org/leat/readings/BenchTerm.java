package org.leat.readings;

import java.util.function.ToDoubleFunction;

/**
 * One number that was read or stated, and what a motor would show there.
 *
 * @param kind of reading
 * @param pair 0 to 2 for AB, BC, CA or the leads A, B, C; −1 for a mean
 * @param path in the file of readings, or in the design
 * @param value read, SI
 * @param standard uncertainty that is its own, one sigma, SI; what it shares with others is a parameter
 * @param shown by a motor
 */
record BenchTerm(
        MotorBench.Kind kind,
        int pair,
        String path,
        double value,
        double standard,
        ToDoubleFunction<FaultyMotor> shown) {

    /** {@return whether it is what a design says, not a reading} */
    boolean stated() {
        return switch (kind) {
            case STATED_VOLTS, STATED_RESISTANCE, STATED_INDUCTANCE, STATED_POLE_PAIRS, DRAG -> true;
            case VOLTS, VOLTS_OF_PAIR, BRIDGE_VOLTS, FREQUENCY, RESISTANCE, AMPS -> false;
        };
    }
}
