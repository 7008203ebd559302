package org.leat.plant.cases;

import java.util.List;
import org.apiguardian.api.API;
import org.leat.electrics.ReverseVoltage;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.RegulatorNumbers;

/**
 * The input window of a tracking regulator that would suit a plant.
 *
 * @param from a little above the battery while it charges, V
 * @param to a tenth above what the bus may see when the battery opens under load, in steps of 5 V
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record TrackingWindow(double from, double to) {

    private static final double ABOVE_BATTERY = 2;
    private static final double RESERVE = 1.1;
    private static final double STEP = 5;

    static TrackingWindow of(PlantNumbers numbers, List<Running> all) {
        double from = numbers.battery().absorptionVoltage() + ABOVE_BATTERY;
        AlternatorNumbers alternator = numbers.alternator();
        double most = all.stream()
                .mapToDouble(running -> ReverseVoltage.LOAD_DUMP
                        * alternator.coldMagnetFactor()
                        * alternator.peakLineVoltage(running.operatingPoint().alternatorSpeed()))
                .max()
                .orElse(from);
        return new TrackingWindow(from, Math.ceil(RESERVE * most / STEP) * STEP);
    }

    /** {@return whether there is such a window} */
    public boolean isOpen() {
        return to > from;
    }

    /** {@return a regulator with this window that wastes nothing} */
    public RegulatorNumbers regulator() {
        return RegulatorNumbers.tracking(from, to, 1);
    }
}
