package org.leat.plant;

import org.leat.electrics.DcLoad;

/** What a time-stepped run of a plant begins with. */
final class Settling {

    private static final double TIME_CONSTANTS = 6;
    private static final double MOST_PERIODS = 80;

    private Settling() {}

    /** {@return periods until a run that begins without current has settled} Frequency in Hz, lead in Ω. */
    static double periods(AlternatorNumbers alternator, double lead, double frequency) {
        double resistance = alternator.phaseResistance() + lead;
        double constants =
                resistance > 0 ? TIME_CONSTANTS * alternator.phaseInductance() / resistance * frequency : MOST_PERIODS;
        return Math.min(MOST_PERIODS, 2 + Math.ceil(constants));
    }

    /** {@return the battery behind its cables, or the tracking regulator at the voltage it has chosen} */
    static DcLoad.Battery bus(PlantNumbers numbers, Operation operation) {
        double upper = numbers.busResistance().bridgeToRegulator();
        Operation.Tracking tracking = operation.tracking();
        return tracking != null
                ? new DcLoad.Battery(tracking.voltage(), upper)
                : new DcLoad.Battery(
                        numbers.battery().restingVoltage(),
                        numbers.battery().internalResistance()
                                + upper
                                + numbers.busResistance().regulatorToBattery());
    }
}
