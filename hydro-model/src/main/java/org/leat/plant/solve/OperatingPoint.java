package org.leat.plant.solve;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where the runner's torque meets the alternator's: the first stable crossing reached from standstill.
 *
 * @param hold whether the alternator holds the runner
 * @param speed of the runner, rad/s
 * @param alternatorSpeed rad/s
 * @param speedRatio bucket speed at the pitch circle over jet velocity
 * @param torque of the runner at its shaft, N·m
 * @param frequency of the alternator, Hz
 * @param phaseCurrent rms of one lead, A
 * @param directCurrent behind the bridge, A
 * @param windingTemperature of the alternator: settled where its thermal resistance is known, in air as hot as it gets;
 *     else as stated or assumed, K
 * @param bus voltages along the bus
 * @param peak greatest torque the alternator can make on this bus
 * @param ofPeakSpeed speed over the speed of that greatest torque; above one the point lies past it
 * @param crossings every speed at which the two torques are equal, from slow to fast
 * @param tracking how the tracking regulator set the voltage; null without one
 * @param energy where the power goes
 */
public record OperatingPoint(
        Hold hold,
        double speed,
        double alternatorSpeed,
        double speedRatio,
        double torque,
        double frequency,
        double phaseCurrent,
        double directCurrent,
        double windingTemperature,
        BusVolts bus,
        TorquePeak peak,
        double ofPeakSpeed,
        List<Crossing> crossings,
        @Nullable Tracking tracking,
        EnergyAccount energy) {
    public OperatingPoint {
        crossings = List.copyOf(crossings);
    }

    /** What the alternator does to the runner. */
    public enum Hold {
        /** it brakes the runner below the speed of its greatest torque. */
        HELD,
        /** the runner is faster than the speed of its greatest torque: the alternator cannot hold it. */
        NOT_HELD,
        /** the bus voltage is not reached, no current flows. */
        BELOW_CUT_IN
    }

    /**
     * A speed at which runner and alternator torque are equal.
     *
     * @param speed of the runner, rad/s
     * @param torque at the runner's shaft, N·m
     * @param stable whether the speed comes back after a small push
     */
    public record Crossing(double speed, double torque, boolean stable) {}

    /**
     * The greatest torque of the alternator on this bus.
     *
     * @param speed of the runner at which it is made, rad/s
     * @param torque at the runner's shaft, no-load torque included, N·m
     * @param runnerTorque of the runner at that speed, N·m
     */
    public record TorquePeak(double speed, double torque, double runnerTorque) {}

    /**
     * Voltages along the bus.
     *
     * @param bridge behind the bridge, V
     * @param regulator at the regulator's input, V; the bridge's less cable drop
     * @param battery at the battery's poles while charging, V
     * @param batteryResting open-circuit voltage of the battery, V
     */
    public record BusVolts(double bridge, double regulator, double battery, double batteryResting) {}

    /**
     * What a tracking regulator does.
     *
     * @param voltage it holds at its input, V
     * @param bound what kept it from a voltage of more power
     */
    public record Tracking(double voltage, Bound bound) {

        /** What binds a tracking regulator. */
        public enum Bound {
            /** nothing: the power is greatest at a voltage inside the window. */
            NOTHING,
            /** the low end of its window. */
            WINDOW_FROM,
            /** the high end of its window. */
            WINDOW_TO,
            /** its output current. */
            CURRENT
        }
    }

    /** {@return charging power at the battery's poles, W} */
    public double batteryPower() {
        return energy.at(EnergyAccount.Stage.BATTERY);
    }

    /** {@return current into the battery, A} */
    public double batteryCurrent() {
        return bus.battery() > 0 ? batteryPower() / bus.battery() : 0;
    }
}
