package org.leat.plant.cases;

import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.ShortCircuitTorque;
import org.leat.electrics.WindingTemperature;
import org.leat.law.Answer;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.RunnerNumbers;
import org.leat.plant.solve.WarmAlternator;
import org.leat.quantity.Celsius;
import org.leat.turbine.ImpulseRunner;
import org.leat.turbine.RunnerParameters;

/**
 * The alternator's leads shorted while the nozzles of a set are open and the runner has run away.
 *
 * @param nozzles the set
 * @param leadCurrent of one lead at the working speed, rms, A
 * @param leastBrakingShare least braking torque over driving torque, at the runner, from the speed of the greatest braking
 *     torque, or the working speed where that is lower, up to the runaway of the full pipe; there it must hold even a
 *     standing runner's torque; nil where no water is known
 * @param creepingHeat heat of the winding once a runner that the shorted leads hold goes on turning under the jet, W: it
 *     creeps at the speed, below that of the greatest braking torque, at which braking and driving torque are equal, and
 *     all its power is then copper loss at the running temperature; nil where the leads do not hold it
 * @param windingTemperature of the running alternator, K
 * @param airTemperature as hot as it gets, K
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record LeadsShorted(
        NozzleGroup nozzles,
        double leadCurrent,
        double leastBrakingShare,
        double creepingHeat,
        double windingTemperature,
        double airTemperature)
        implements Situation {

    private static final int STEPS = 40;
    private static final int HALVINGS = 60;

    @Override
    public String id() {
        return "leads-shorted/" + nozzles.name();
    }

    /** {@return current behind a bridge with its output shorted, A: 3√2/π of the leads' rms} */
    public double directCurrent() {
        return 3 * Math.sqrt(2) / Math.PI * leadCurrent;
    }

    /**
     * {@return temperature at which the winding settles with the creeping runner's heat in it, K; empty where it warms
     * faster than it can cool, and burns}
     *
     * @param thermalResistance of winding to air, K/W
     */
    public OptionalDouble windingTemperature(double thermalResistance) {
        Answer settled = WindingTemperature.of(
                Celsius.of(airTemperature), 0, creepingHeat, Celsius.of(windingTemperature), thermalResistance);
        return settled instanceof Answer.Value value
                ? OptionalDouble.of(Celsius.toKelvin(value.value()))
                : OptionalDouble.empty();
    }

    static LeadsShorted of(PlantNumbers numbers, Running running, LoadLost lost) {
        Brake brake = new Brake(numbers, running);
        return new LeadsShorted(
                running.nozzles(),
                ShortCircuitTorque.current(
                        brake.machine, running.operatingPoint().alternatorSpeed()),
                brake.leastShare(running.operatingPoint().speed(), lost.speed()),
                brake.creepingHeat(),
                running.operatingPoint().windingTemperature(),
                numbers.site().highestAirTemperature());
    }

    /** The machine as warm as it runs, and the runner under the full pipe's jet; speeds are the runner's. */
    private static final class Brake {
        private final AlternatorConstants machine;
        private final double gear;
        private final ImpulseRunner runner;
        private final double flow;
        private final double jet;
        private final double corner;

        Brake(PlantNumbers numbers, Running running) {
            machine = WarmAlternator.of(
                    numbers.alternator().warmedTo(running.operatingPoint().windingTemperature()));
            gear = numbers.alternator().gearRatio();
            RunnerNumbers wheel = numbers.runner();
            runner = new ImpulseRunner(new RunnerParameters(
                    wheel.pitchDiameter() / 2,
                    wheel.bucketEfficiency(),
                    wheel.returnFactor(),
                    wheel.jetAngle(),
                    wheel.lateEntry(),
                    0,
                    0,
                    numbers.water().density()));
            flow = running.water().fullPipeFlow();
            jet = running.water().flow() > 0
                    ? running.water().jetVelocity() * flow / running.water().flow()
                    : 0;
            corner = machine.phaseResistance() / (machine.phaseInductance() * machine.polePairs()) / gear;
        }

        private double braking(double speed) {
            return gear * ShortCircuitTorque.torque(machine, gear * speed);
        }

        private double driving(double speed) {
            return runner.torque(flow, jet, speed);
        }

        double leastShare(double working, double runaway) {
            // a winding of much resistance grips best at a speed the runner never reaches: it must hold the working
            // speed
            double slowest = Math.min(corner, working);
            double standing = driving(0);
            if (!(standing > 0)) {
                return 0;
            }
            double least = braking(slowest) / standing;
            for (int i = 0; i <= STEPS && slowest < runaway; i++) {
                double speed = slowest + (runaway - slowest) * i / STEPS;
                if (driving(speed) > 0.01 * braking(speed)) {
                    least = Math.min(least, braking(speed) / driving(speed));
                }
            }
            return least;
        }

        double creepingHeat() {
            double low = 0;
            double high = corner;
            if (braking(high) < driving(high)) {
                return 0;
            }
            for (int n = 0; n < HALVINGS; n++) {
                double middle = 0.5 * (low + high);
                if (braking(middle) < driving(middle)) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return high * driving(high);
        }
    }
}
