package org.leat.plant.duties;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.leat.electrics.BatteryClamp;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solve.ElectricSide;
import org.leat.plant.solve.RunnerCharacteristic;
import org.leat.plant.solve.TorqueCurve;
import org.leat.plant.solved.OperatingPoint;

/**
 * What the runner gives and what the alternator asks, against speed, on one nozzle set: the curves whose crossing is the
 * operating point. The alternator is as warm as it runs there, on the bus as it is held there.
 *
 * @param nozzles the set
 * @param runawaySpeed of the runner, at which it gives no more torque, rad/s
 * @param points from standstill to the runaway speed
 */
public record TorqueOverSpeed(NozzleGroup nozzles, double runawaySpeed, List<Point> points) {

    private static final int STEPS = 40;

    public TorqueOverSpeed {
        points = List.copyOf(points);
    }

    /**
     * One speed.
     *
     * @param speed of the runner, rad/s
     * @param runner its torque at the shaft, N·m
     * @param alternator what the alternator asks of the runner, no-load torque included, N·m
     */
    public record Point(double speed, double runner, double alternator) {}

    /** {@return the curves of a plant running} */
    public static TorqueOverSpeed of(PlantNumbers numbers, Running running) {
        OperatingPoint at = running.operatingPoint();
        RunnerCharacteristic runner =
                new RunnerCharacteristic(numbers.runner(), numbers.water().density(), running.water());
        ElectricSide machine = new ElectricSide(numbers);
        if (numbers.alternator().thermalResistance().isKnown()) {
            machine = machine.warmedTo(at.windingTemperature());
        }
        OperatingPoint.Tracking tracking = at.tracking();
        BatteryClamp bus = tracking == null
                ? machine.onItsBattery()
                : machine.bus(tracking.voltage(), numbers.busResistance().bridgeToRegulator());
        TorqueCurve curve = machine.curve(bus);
        double runaway = runner.runawaySpeed();
        TreeSet<Double> speeds = new TreeSet<>();
        for (int i = 0; i < STEPS; i++) {
            speeds.add(runaway * i / STEPS);
        }
        speeds.add(runaway);
        for (double bend : new double[] {curve.cutIn(), at.speed(), at.peak().speed()}) {
            if (bend > 0 && bend < runaway) {
                speeds.add(bend);
            }
        }
        List<Point> points = new ArrayList<>();
        for (double speed : speeds) {
            points.add(new Point(speed, runner.torque(speed), curve.torqueAt(speed)));
        }
        return new TorqueOverSpeed(running.nozzles(), runaway, points);
    }
}
