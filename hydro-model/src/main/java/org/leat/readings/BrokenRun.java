package org.leat.readings;

import java.util.function.DoubleUnaryOperator;
import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.BridgeFault;
import org.leat.electrics.BridgeTimeStepper;
import org.leat.electrics.BridgeWaveform;
import org.leat.electrics.DcLoad;
import org.leat.electrics.DiodeLine;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solve.FalsePosition;
import org.leat.plant.solve.RunnerCharacteristic;
import org.leat.plant.solve.WarmAlternator;
import org.leat.plant.solved.OperatingPoint;

/**
 * A plant that runs on with part of its bridge broken, stepped in time: the first speed from standstill at which the torques meet.
 * A shorted diode brakes by a current that circulates: the wheel comes to some tens of turns a minute.
 *
 * @param speed of the runner, rad/s
 * @param wave what the bridge does there
 */
record BrokenRun(double speed, BridgeWaveform wave) {

    private static final int STEPS = 180;
    private static final double TOLERANCE = 2e-3;
    private static final double UPWARD = 1.35;
    private static final double UPWARD_NEAR = 1.07;

    /** Of the runaway speed, where the search of a braked wheel begins. */
    private static final double SLOWEST = 2e-3;

    static BrokenRun of(PlantNumbers numbers, Running running, RunnerCharacteristic runner, BridgeFault fault) {
        OperatingPoint point = running.operatingPoint();
        AlternatorNumbers a = numbers.alternator();
        AlternatorConstants machine = WarmAlternator.of(a.warmedTo(point.windingTemperature()));
        DiodeLine diode = new DiodeLine(
                numbers.rectifier().threshold(), numbers.rectifier().slopeResistance());
        double upper = numbers.busResistance().bridgeToRegulator();
        OperatingPoint.Tracking tracking = point.tracking();
        DcLoad.Battery bus = tracking != null
                ? new DcLoad.Battery(tracking.voltage(), upper)
                : new DcLoad.Battery(
                        numbers.battery().restingVoltage(),
                        numbers.battery().internalResistance()
                                + upper
                                + numbers.busResistance().regulatorToBattery());
        double lead = numbers.busResistance().phase();
        Stepped stepped = new Stepped(machine, lead, diode, bus, fault, a);
        DoubleUnaryOperator surplus = speed -> runner.torque(speed)
                - a.gearRatio() * (stepped.at(speed).torque() + a.noLoad().at(speed * a.gearRatio()));
        double runaway = runner.runawaySpeed();
        boolean braked = fault == BridgeFault.DIODE_SHORT;
        double low = braked ? SLOWEST * runaway : Math.max(SLOWEST * runaway, 0.9 * point.speed());
        double upward = braked ? UPWARD : UPWARD_NEAR;
        double atLow = surplus.applyAsDouble(low);
        double high = low;
        double atHigh = atLow;
        while (atHigh > 0 && high < runaway) {
            low = high;
            atLow = atHigh;
            high = Math.min(runaway, high * upward);
            atHigh = high < runaway ? surplus.applyAsDouble(high) : Math.min(surplus.applyAsDouble(high), 0);
        }
        double speed =
                atHigh < 0 && atLow > 0 ? FalsePosition.between(surplus, low, atLow, high, atHigh, TOLERANCE) : high;
        return new BrokenRun(speed, stepped.at(speed));
    }

    private record Stepped(
            AlternatorConstants machine,
            double lead,
            DiodeLine diode,
            DcLoad.Battery bus,
            BridgeFault fault,
            AlternatorNumbers alternator) {

        BridgeWaveform at(double runnerSpeed) {
            double own = runnerSpeed * alternator.gearRatio();
            BridgeTimeStepper run = new BridgeTimeStepper(machine, lead, diode, own, bus, fault, STEPS);
            double resistance = machine.phaseResistance() + lead + diode.slope();
            double constants =
                    resistance > 0 ? 6 * machine.phaseInductance() / resistance * machine.frequency(own) : 60;
            run.run(Math.min(60, 2 + Math.ceil(constants)));
            return run.measure(2);
        }
    }
}
