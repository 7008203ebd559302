package org.leat.plant.cases;

import org.apiguardian.api.API;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.numbers.NozzleGroup;

/**
 * Running on with one lead or winding interrupted, or with one diode that does not conduct, or with one that conducts both ways:
 * stepped in time at the speed at which the runner's torque meets the alternator's, searched from the working speed to the side to
 * which the wheel is driven: with less torque upward, braked by a shorted diode downward. Battery and
 * regulator hold the bus as before; a tracking regulator is taken to keep its voltage.
 *
 * @param nozzles the set
 * @param fault what is broken
 * @param held whether a speed was found at which the torques meet; the numbers below are of the runaway speed where not, or of
 *     the slowest speed looked at where the wheel is braked to less
 * @param runnerSpeed rad/s
 * @param directCurrent behind the bridge, mean, A
 * @param currentLeft of the direct current before, a share; nil where none flowed
 * @param phaseCurrent rms of the lead that carries most, A
 * @param diodeCurrent mean of the diode that carries most, A
 * @param rippleAtFrequency of the direct current at the alternator's frequency, A: one diode shows there
 * @param rippleAtTwice at twice the frequency, A: one phase shows there
 * @param lastingVoltage the highest behind the bridge within a period, V
 * @param batteryVoltage at the battery's node, V
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record BrokenBridge(
        NozzleGroup nozzles,
        Fault fault,
        boolean held,
        double runnerSpeed,
        double directCurrent,
        double currentLeft,
        double phaseCurrent,
        double diodeCurrent,
        double rippleAtFrequency,
        double rippleAtTwice,
        double lastingVoltage,
        double batteryVoltage)
        implements BusSituation {

    /** What is broken between the winding and the d.c. output. */
    public enum Fault {
        /** one lead or winding is interrupted. */
        PHASE_OPEN,
        /** one diode does not conduct. */
        DIODE_OPEN,
        /** one diode conducts both ways. */
        DIODE_SHORT
    }

    @Override
    public BusHolder holder() {
        return BusHolder.BATTERY;
    }

    @Override
    public String id() {
        String broken = switch (fault) {
            case PHASE_OPEN -> "phase-open/";
            case DIODE_OPEN -> "diode-open/";
            case DIODE_SHORT -> "diode-short/";
        };
        return broken + nozzles.name();
    }
}
