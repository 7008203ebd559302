package org.leat.plant.solved;

import java.util.List;
import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * Where the runner's torque meets the alternator's: the first stable crossing reached from standstill. Made by the solver
 * alone; two are equal where all their numbers are.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public interface OperatingPoint {

    /** {@return whether the alternator holds the runner} */
    Hold hold();

    /** {@return speeds and torque} */
    Shaft shaft();

    /** {@return what the alternator gives} */
    Output output();

    /**
     * {@return temperature of the winding, K: settled where its thermal resistance is known, in air as hot as it gets; else as
     * stated or assumed}
     */
    double windingTemperature();

    /** {@return voltages along the bus} */
    BusVolts bus();

    /** {@return greatest torque the alternator can make on this bus} */
    TorquePeak peak();

    /** {@return every speed at which the two torques are equal, from slow to fast} */
    List<Crossing> crossings();

    /**
     * {@return the other speeds at which it may run for ever, from slow to fast} It comes to one after a push: load lost for a moment, a
     * battery connected to the wheel that has run away, more water for a while. Only where current flows.
     */
    List<StableSpeed> otherSpeeds();

    /** {@return how the tracking regulator set the voltage; null without one} */
    @Nullable
    Tracking tracking();

    /** {@return where the power goes} */
    EnergyAccount energy();

    /** What the alternator does to the runner. */
    enum Hold {
        /** it brakes the runner below the speed of its greatest torque. */
        HELD,
        /** the runner is faster than the speed of its greatest torque: the alternator cannot hold it. */
        NOT_HELD,
        /** the bus voltage is not reached, no current flows. */
        BELOW_CUT_IN,
        /** the jet is too weak to start the wheel: at rest it turns less than iron and friction hold. */
        DOES_NOT_START
    }

    /**
     * Speeds and torque of the shaft.
     *
     * @param speed of the runner, rad/s
     * @param alternatorSpeed rad/s
     * @param speedRatio bucket speed at the pitch circle over jet velocity
     * @param torque of the runner at its shaft, N·m
     */
    record Shaft(double speed, double alternatorSpeed, double speedRatio, double torque) {}

    /**
     * What the alternator gives.
     *
     * @param frequency of the alternator, Hz
     * @param phaseCurrent rms of one lead, A
     * @param directCurrent behind the bridge, A
     */
    record Output(double frequency, double phaseCurrent, double directCurrent) {}

    /**
     * A speed at which runner and alternator torque are equal.
     *
     * @param speed of the runner, rad/s
     * @param torque at the runner's shaft, N·m
     * @param stable whether the speed comes back after a small push
     */
    record Crossing(double speed, double torque, boolean stable) {}

    /**
     * Another stable crossing, and what the alternator gives there.
     *
     * @param speed of the runner, rad/s
     * @param alternatorSpeed rad/s
     * @param frequency of the alternator, Hz
     * @param phaseCurrent rms of one lead, A
     * @param directCurrent behind the bridge, A
     * @param directPower behind the bridge, W
     * @param copperLoss of the winding, W
     * @param idleLoss iron and friction, W
     */
    record StableSpeed(
            double speed,
            double alternatorSpeed,
            double frequency,
            double phaseCurrent,
            double directCurrent,
            double directPower,
            double copperLoss,
            double idleLoss) {}

    /**
     * The greatest torque of the alternator on this bus.
     *
     * @param speed of the runner at which it is made, rad/s
     * @param torque at the runner's shaft, no-load torque included, N·m
     * @param runnerTorque of the runner at that speed, N·m
     */
    record TorquePeak(double speed, double torque, double runnerTorque) {

        /** {@return greatest torque over the runner's; empty where the runner does not push there} */
        public OptionalDouble overRunner() {
            return runnerTorque <= 0 ? OptionalDouble.empty() : OptionalDouble.of(torque / runnerTorque);
        }

        /** {@return the runner's torque over the greatest; nil where the runner does not push there} */
        public double runnerShare() {
            return Math.max(0, runnerTorque) / torque;
        }
    }

    /**
     * Voltages along the bus.
     *
     * @param bridge behind the bridge, V
     * @param regulator at the regulator's input, V; the bridge's less cable drop
     * @param battery at the battery's poles while charging, V
     * @param batteryResting open-circuit voltage of the battery, V
     */
    record BusVolts(double bridge, double regulator, double battery, double batteryResting) {}

    /**
     * What a tracking regulator does.
     *
     * @param voltage it holds at its input, V
     * @param bound what kept it from a voltage of more power
     */
    record Tracking(double voltage, Bound bound) {

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

    /** {@return speed of the runner, rad/s} */
    default double speed() {
        return shaft().speed();
    }

    /** {@return rad/s} */
    default double alternatorSpeed() {
        return shaft().alternatorSpeed();
    }

    /** {@return bucket speed at the pitch circle over jet velocity} */
    default double speedRatio() {
        return shaft().speedRatio();
    }

    /** {@return torque of the runner at its shaft, N·m} */
    default double torque() {
        return shaft().torque();
    }

    /** {@return of the alternator, Hz} */
    default double frequency() {
        return output().frequency();
    }

    /** {@return rms of one lead, A} */
    default double phaseCurrent() {
        return output().phaseCurrent();
    }

    /** {@return behind the bridge, A} */
    default double directCurrent() {
        return output().directCurrent();
    }

    /** {@return speed over the speed of the greatest torque; above one the point lies past it} */
    default double ofPeakSpeed() {
        return speed() / peak().speed();
    }

    /** {@return whether current flows} */
    default boolean loaded() {
        return hold() == Hold.HELD || hold() == Hold.NOT_HELD;
    }

    /** {@return charging power at the battery's poles, W} */
    default double batteryPower() {
        return energy().at(EnergyAccount.Stage.BATTERY);
    }

    /** {@return current into the battery, A} */
    default double batteryCurrent() {
        return bus().battery() > 0 ? batteryPower() / bus().battery() : 0;
    }
}
