package org.leat.plant.cases;

import org.leat.electrics.DcLoad;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solved.OperatingPoint;

/** What a time-stepped run of a plant begins with. */
final class SteppedStart {

    private static final double TIME_CONSTANTS = 6;
    private static final double MOST_PERIODS = 80;

    private SteppedStart() {}

    /**
     * {@return periods until a run that begins without current has settled}
     *
     * @param resistance of a phase with its lead, Ω
     * @param inductance of a phase, H
     * @param frequency Hz
     */
    static double periods(double resistance, double inductance, double frequency) {
        double constants = resistance > 0 ? TIME_CONSTANTS * inductance / resistance * frequency : MOST_PERIODS;
        return Math.min(MOST_PERIODS, 2 + Math.ceil(constants));
    }

    /** {@return the battery behind its cables, or the tracking regulator at the voltage it has chosen} */
    static DcLoad.Battery bus(PlantNumbers numbers, OperatingPoint operatingPoint) {
        double upper = numbers.busResistance().bridgeToRegulator();
        OperatingPoint.Tracking tracking = operatingPoint.tracking();
        return tracking != null
                ? new DcLoad.Battery(tracking.voltage(), upper)
                : new DcLoad.Battery(
                        numbers.battery().restingVoltage(),
                        numbers.battery().internalResistance()
                                + upper
                                + numbers.busResistance().regulatorToBattery());
    }
}
