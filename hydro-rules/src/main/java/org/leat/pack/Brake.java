package org.leat.pack;

import org.leat.check.Judgement;
import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.ShortCircuitTorque;
import org.leat.plant.cases.LoadLost;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.RunnerNumbers;
import org.leat.plant.solve.WaterSide;
import org.leat.turbine.ImpulseRunner;
import org.leat.turbine.RunnerParameters;

/** The alternator with its leads shorted, and the wheel that turns it. */
final class Brake {

    private Brake() {}

    /** {@return the machine as warm as it runs} */
    static AlternatorConstants machine(Judgement j, Running running) {
        return j.plant()
                .numbers()
                .alternator()
                .warmedTo(running.operatingPoint().windingTemperature())
                .atWindingTemperature();
    }

    /**
     * {@return least braking torque over driving torque, at the wheel, from the speed of the greatest braking torque, or the
     * working speed where that is lower, up to the runaway of the full pipe; nil where no water is known} There it must
     * hold even a standing wheel's torque.
     */
    static double leastShare(Judgement j, Running running, LoadLost lost) {
        AlternatorConstants machine = machine(j, running);
        double gear = j.plant().numbers().alternator().gearRatio();
        double corner = machine.phaseResistance() / (machine.phaseInductance() * machine.polePairs()) / gear;
        // a winding of much resistance grips best at a speed the wheel never reaches: it must hold the working speed
        double slowest = Math.min(corner, running.operatingPoint().speed());
        ImpulseRunner wheel = wheel(j);
        WaterSide water = running.water();
        double flow = water.fullPipeFlow();
        double jet = water.flow() > 0 ? water.jetVelocity() * flow / water.flow() : 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 40 && slowest < lost.speed(); i++) {
            double speed = slowest + (lost.speed() - slowest) * i / 40;
            double driving = wheel.torque(flow, jet, speed);
            double braking = gear * ShortCircuitTorque.torque(machine, gear * speed);
            if (driving > 0.01 * braking) {
                least = Math.min(least, braking / driving);
            }
        }
        double standing = wheel.torque(flow, jet, 0);
        return standing > 0 ? Math.min(least, gear * ShortCircuitTorque.torque(machine, gear * slowest) / standing) : 0;
    }

    /**
     * {@return heat of the winding once a wheel that the shorted leads hold goes on turning under the jet, W} It creeps at the
     * speed, below that of the greatest braking torque, at which braking and driving torque are equal; all its power is then
     * copper loss, at the running temperature. Nil where the leads do not hold it.
     */
    static double creepingHeat(Judgement j, Running running) {
        AlternatorConstants machine = machine(j, running);
        double gear = j.plant().numbers().alternator().gearRatio();
        ImpulseRunner wheel = wheel(j);
        WaterSide water = running.water();
        double flow = water.fullPipeFlow();
        double jet = water.flow() > 0 ? water.jetVelocity() * flow / water.flow() : 0;
        double low = 0;
        double high = machine.phaseResistance() / (machine.phaseInductance() * machine.polePairs()) / gear;
        if (gear * ShortCircuitTorque.torque(machine, gear * high) < wheel.torque(flow, jet, high)) {
            return 0;
        }
        for (int n = 0; n < 60; n++) {
            double middle = 0.5 * (low + high);
            if (gear * ShortCircuitTorque.torque(machine, gear * middle) < wheel.torque(flow, jet, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high * wheel.torque(flow, jet, high);
    }

    private static ImpulseRunner wheel(Judgement j) {
        RunnerNumbers runner = j.plant().numbers().runner();
        return new ImpulseRunner(new RunnerParameters(
                runner.pitchDiameter() / 2,
                runner.bucketEfficiency(),
                runner.returnFactor(),
                runner.jetAngle(),
                runner.lateEntry(),
                0,
                0,
                j.plant().numbers().water().density()));
    }
}
