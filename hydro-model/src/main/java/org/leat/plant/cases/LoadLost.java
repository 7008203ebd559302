package org.leat.plant.cases;

import org.apiguardian.api.API;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.numbers.NozzleGroup;

/**
 * Load lost: the nozzles open, nothing connected to the alternator, magnets as cold as they get.
 *
 * @param nozzles the set
 * @param speed of the runner when it has run away, rad/s
 * @param alternatorSpeed rad/s
 * @param frequency Hz
 * @param peakLineVoltage between two leads, V
 * @param directVoltage settled behind the bridge, V; the peak line voltage
 * @param batteryVoltage at the battery's node, V
 * @param emptyCapacitorVoltage for a moment at an empty capacitor connected to the spinning machine, V
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record LoadLost(
        NozzleGroup nozzles,
        double speed,
        double alternatorSpeed,
        double frequency,
        double peakLineVoltage,
        double directVoltage,
        double batteryVoltage,
        double emptyCapacitorVoltage)
        implements BusSituation {

    /** {@return rms voltage between two leads, V} */
    public double lineVoltage() {
        return peakLineVoltage / Math.sqrt(2);
    }

    @Override
    public double lastingVoltage() {
        return directVoltage;
    }

    @Override
    public double runnerSpeed() {
        return speed;
    }

    @Override
    public BusHolder holder() {
        return BusHolder.NOTHING;
    }

    @Override
    public String id() {
        return "load-lost/" + nozzles.name();
    }
}
