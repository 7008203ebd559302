package org.leat.report;

import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;

/** What is read, and where, in words. */
final class ReadingKindWords {

    private ReadingKindWords() {}

    /** {@return what it is} */
    static String name(ReadingKind what) {
        return switch (what) {
            case STANDING_PRESSURE -> "standing pressure";
            case RUNNING_PRESSURE -> "running pressure";
            case MIDWAY_PRESSURE -> "pressure half-way";
            case FLOW -> "flow";
            case INTAKE_FLOW -> "flow at the intake";
            case SPEED -> "speed of the wheel";
            case FREQUENCY -> "frequency";
            case LEAD_VOLTS -> "volts between leads";
            case LEAD_SPREAD -> "spread of the three pairs";
            case BRIDGE_VOLTS -> "volts behind the bridge";
            case BATTERY_VOLTS -> "volts at the battery";
            case BRIDGE_AMPS -> "amps behind the bridge";
            case BATTERY_AMPS -> "amps into the battery";
            case LEAD_AMPS -> "amps of a lead";
            case WINDING_TEMPERATURE -> "winding";
        };
    }

    /** {@return where and with what it is read} */
    static String where(ReadingKind what) {
        return switch (what) {
            case STANDING_PRESSURE, RUNNING_PRESSURE -> "gauge by the nozzles";
            case MIDWAY_PRESSURE -> "gauge half-way down the pipe";
            case FLOW -> "bucket and watch, below the wheel";
            case INTAKE_FLOW -> "at the intake, over a weir or with salt";
            case SPEED -> "optical counter, mark on the wheel";
            case FREQUENCY -> "meter on Hz, two leads";
            case LEAD_VOLTS, LEAD_SPREAD -> "a.c., all three pairs";
            case BRIDGE_VOLTS -> "d.c., at the bridge's output";
            case BATTERY_VOLTS -> "d.c., at the poles themselves";
            case BRIDGE_AMPS -> "d.c. clamp, at the bridge's output";
            case BATTERY_AMPS -> "d.c. clamp, at the battery";
            case LEAD_AMPS -> "a.c. clamp, one lead";
            case WINDING_TEMPERATURE -> "thermometer on the winding's end";
        };
    }

    /** {@return what the alternator works on} */
    static String state(LoadState state) {
        return switch (state) {
            case SHUT -> "nozzles shut";
            case OPEN -> "leads open";
            case DUMP -> "on the dump load alone";
            case BUS -> "on the bus";
        };
    }
}
