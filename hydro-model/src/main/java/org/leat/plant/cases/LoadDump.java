package org.leat.plant.cases;

import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.BridgeFault;
import org.leat.electrics.BridgeTimeStepper;
import org.leat.electrics.DcLoad;
import org.leat.electrics.DiodeLine;
import org.leat.electrics.ReverseVoltage;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solved.OperatingPoint;

/**
 * Highest voltage behind the bridge while the current of the winding dies away after the battery has opened.
 *
 * <p>With at least {@value #SIMULATED_CAPACITANCE} F behind the bridge, and no more energy in the winding beside that of the
 * capacitor than in the simulated case, the factor of that case holds ({@link ReverseVoltage#LOAD_DUMP}). With less, or more
 * energy, the plant is stepped in time, opened at several moments of a sixth of a period, and the worst is taken. Without a
 * capacitor nothing that the design states limits it: unknown.
 */
final class LoadDump {

    /** Of the stored circuit simulation whose factor is taken, F. */
    private static final double SIMULATED_CAPACITANCE = 470e-6;

    /** L I²/(C E²) of that simulation: 0.3 mH, 27.1 A, 470 µF, 42.8 V between leads. */
    private static final double SIMULATED_ENERGY = 0.3e-3 * 27.1 * 27.1 / (470e-6 * 42.8 * 42.8);

    private static final int MOMENTS = 6;
    private static final int STEPS = 360;

    private LoadDump() {}

    /** {@return the voltage, V; magnets cold} Nothing flows: the peak between leads. */
    static Amount of(PlantNumbers numbers, Running running) {
        AlternatorNumbers alternator = numbers.alternator();
        OperatingPoint operatingPoint = running.operatingPoint();
        double peak = alternator.coldMagnetFactor() * alternator.peakLineVoltage(operatingPoint.alternatorSpeed());
        double current = operatingPoint.directCurrent();
        if (!(current > 0) || !(alternator.phaseInductance() > 0)) {
            return Amount.of(peak);
        }
        double capacitance = numbers.rectifier().capacitance();
        if (!(capacitance > 0)) {
            return Amount.missing("/rectifier/capacitance", "unknown/no-capacitor-to-open-on");
        }
        double energy = alternator.phaseInductance() * current * current / (capacitance * peak * peak);
        if (capacitance >= SIMULATED_CAPACITANCE && energy <= SIMULATED_ENERGY) {
            return Amount.of(ReverseVoltage.loadDump(peak));
        }
        return Amount.of(Math.max(peak, stepped(numbers, running, capacitance)));
    }

    private static double stepped(PlantNumbers numbers, Running running, double capacitance) {
        AlternatorNumbers alternator = numbers.alternator();
        AlternatorConstants machine = new AlternatorConstants(
                alternator.polePairs(),
                alternator.coldMagnetFactor() * alternator.fluxLinkage(),
                alternator.phaseResistance(),
                alternator.phaseInductance());
        DiodeLine diode = new DiodeLine(
                numbers.rectifier().threshold(), numbers.rectifier().slopeResistance());
        double speed = running.operatingPoint().alternatorSpeed();
        double pace = machine.electricalSpeed(speed) / (2 * Math.PI);
        double lead = numbers.busResistance().phase();
        double settle = SteppedStart.periods(alternator.phaseResistance() + lead, alternator.phaseInductance(), pace);
        DcLoad.Battery bus = SteppedStart.bus(numbers, running.operatingPoint());
        double ring = 2 * Math.PI * Math.sqrt(2 * alternator.phaseInductance() * capacitance);
        double after = 1 + Math.min(20, ring * pace);
        double highest = 0;
        for (int moment = 0; moment < MOMENTS; moment++) {
            double opens = settle + moment / (6.0 * MOMENTS);
            DcLoad load = new DcLoad.Capacitor(
                    capacitance, 1e9, bus.voltage(), bus.voltage(), Math.max(1e-3, bus.resistance()), opens / pace);
            BridgeTimeStepper run = new BridgeTimeStepper(machine, lead, diode, speed, load, BridgeFault.NONE, STEPS);
            run.run(opens);
            highest = Math.max(highest, run.measure(after).greatestDirectVoltage());
        }
        return highest;
    }
}
