package org.leat.plant.cases;

import java.util.ArrayList;
import java.util.List;
import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.BridgeFault;
import org.leat.electrics.BridgeTimeStepper;
import org.leat.electrics.BridgeWaveform;
import org.leat.electrics.DcLoad;
import org.leat.electrics.DiodeLine;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solve.FalsePosition;
import org.leat.plant.solve.RunnerCharacteristic;
import org.leat.plant.solve.WarmAlternator;

/** Finds where a plant runs with part of its bridge broken. */
final class BrokenBridgeSolver {

    private static final int STEPS = 360;
    private static final int MEASURED = 2;
    private static final double UPWARD = 1.07;
    private static final double DOWNWARD = 0.8;
    private static final double SLOWEST = 0.02;
    private static final double TOLERANCE = 2e-3;

    private final PlantNumbers numbers;
    private final Running running;
    private final BrokenBridge.Fault fault;
    private final AlternatorConstants machine;
    private final DiodeLine diode;
    private final DcLoad.Battery bus;
    private final double lead;
    private final RunnerCharacteristic runner;

    private BrokenBridgeSolver(PlantNumbers numbers, Running running, BrokenBridge.Fault fault) {
        this.numbers = numbers;
        this.running = running;
        this.fault = fault;
        this.machine = WarmAlternator.of(
                numbers.alternator().warmedTo(running.operatingPoint().windingTemperature()));
        this.diode = new DiodeLine(
                numbers.rectifier().threshold(), numbers.rectifier().slopeResistance());
        this.bus = SteppedStart.bus(numbers, running.operatingPoint());
        this.lead = numbers.busResistance().phase();
        this.runner = new RunnerCharacteristic(numbers.runner(), numbers.water().density(), running.water());
    }

    /** {@return one phase and one diode open; empty where no current flows or the winding has no inductance to step with} */
    static List<BrokenBridge> open(PlantNumbers numbers, Running running) {
        return of(numbers, running, BrokenBridge.Fault.PHASE_OPEN, BrokenBridge.Fault.DIODE_OPEN);
    }

    /** {@return one diode that conducts both ways; empty as above} */
    static List<BrokenBridge> shorted(PlantNumbers numbers, Running running) {
        return of(numbers, running, BrokenBridge.Fault.DIODE_SHORT);
    }

    private static List<BrokenBridge> of(PlantNumbers numbers, Running running, BrokenBridge.Fault... faults) {
        List<BrokenBridge> cases = new ArrayList<>();
        if (running.operatingPoint().directCurrent() > 0
                && running.operatingPoint().speed() > 0
                && numbers.alternator().phaseInductance() > 0) {
            for (BrokenBridge.Fault fault : faults) {
                cases.add(new BrokenBridgeSolver(numbers, running, fault).solved());
            }
        }
        return cases;
    }

    private BrokenBridge solved() {
        double atWork = surplus(running.operatingPoint().speed());
        return atWork < 0 ? braked(atWork) : driven(atWork);
    }

    /** From the working speed down to where the runner's torque meets the brake's. */
    private BrokenBridge braked(double atWork) {
        double slowest = SLOWEST * running.operatingPoint().speed();
        double high = running.operatingPoint().speed();
        double atHigh = atWork;
        double low = high;
        double atLow = atHigh;
        while (atLow < 0 && low > slowest) {
            high = low;
            atHigh = atLow;
            low *= DOWNWARD;
            atLow = surplus(low);
        }
        return atLow < 0
                ? at(low, false)
                : at(FalsePosition.between(this::surplus, low, atLow, high, atHigh, TOLERANCE), true);
    }

    private BrokenBridge driven(double atWork) {
        double runaway = runner.runawaySpeed();
        double low = running.operatingPoint().speed();
        double atLow = atWork;
        double high = low;
        double atHigh = atLow;
        while (atHigh > 0 && high < runaway) {
            low = high;
            atLow = atHigh;
            high = Math.min(runaway, high * UPWARD);
            atHigh = high < runaway ? surplus(high) : Math.min(surplus(high), 0);
        }
        double speed = atHigh < 0 && atLow > 0
                ? FalsePosition.between(this::surplus, low, atLow, high, atHigh, TOLERANCE)
                : high;
        return at(speed, speed < runaway);
    }

    private BrokenBridge at(double speed, boolean held) {
        BridgeWaveform wave = settled(speed).measure(MEASURED);
        return new BrokenBridge(
                running.nozzles(),
                fault,
                held,
                speed,
                wave.directCurrent(),
                wave.directCurrent() / running.operatingPoint().directCurrent(),
                wave.phaseCurrentRms(),
                wave.diodeCurrent(),
                wave.rippleAtFrequency(),
                wave.rippleAtTwice(),
                wave.greatestDirectVoltage(),
                running.operatingPoint().tracking() == null ? wave.greatestDirectVoltage() : running.batteryVoltage());
    }

    /** Torque that speeds the runner up, N·m. */
    private double surplus(double speed) {
        AlternatorNumbers a = numbers.alternator();
        double idle = a.noLoadTorque() + a.noLoadTorquePerSpeed() * speed * a.gearRatio();
        return runner.torque(speed) - a.gearRatio() * (settled(speed).torque(MEASURED) + idle);
    }

    private BridgeTimeStepper settled(double speed) {
        double own = speed * numbers.alternator().gearRatio();
        BridgeFault broken = switch (fault) {
            case PHASE_OPEN -> BridgeFault.PHASE_OPEN;
            case DIODE_OPEN -> BridgeFault.DIODE_OPEN;
            case DIODE_SHORT -> BridgeFault.DIODE_SHORT;
        };
        BridgeTimeStepper run = new BridgeTimeStepper(machine, lead, diode, own, bus, broken, STEPS);
        run.run(SteppedStart.periods(numbers.alternator(), lead, machine.electricalSpeed(own) / (2 * Math.PI)));
        return run;
    }
}
