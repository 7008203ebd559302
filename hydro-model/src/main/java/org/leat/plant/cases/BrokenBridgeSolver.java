package org.leat.plant.cases;

import java.util.ArrayList;
import java.util.List;
import org.leat.electrics.BridgeFault;
import org.leat.electrics.BridgeWaveform;
import org.leat.electrics.DiodeLine;
import org.leat.lazy.OncePerKey;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solve.RunnerCharacteristic;
import org.leat.plant.solve.WarmAlternator;

/** Finds where a plant runs with part of its bridge broken. */
final class BrokenBridgeSolver {

    private BrokenBridgeSolver() {}

    /**
     * {@return one phase and one diode open; empty where no current flows or the winding has no inductance to step with}
     *
     * @param searches made before
     */
    static List<BrokenBridge> open(
            PlantNumbers numbers, Running running, OncePerKey<BridgeSearch, BridgeSearch.Found> searches) {
        return running.operatingPoint().directCurrent() > 0
                ? of(numbers, running, searches, BrokenBridge.Fault.PHASE_OPEN, BrokenBridge.Fault.DIODE_OPEN)
                : List.of();
    }

    /** {@return one diode that conducts both ways; empty where the wheel stands or the winding has no inductance} */
    static List<BrokenBridge> shorted(
            PlantNumbers numbers, Running running, OncePerKey<BridgeSearch, BridgeSearch.Found> searches) {
        return of(numbers, running, searches, BrokenBridge.Fault.DIODE_SHORT);
    }

    private static List<BrokenBridge> of(
            PlantNumbers numbers,
            Running running,
            OncePerKey<BridgeSearch, BridgeSearch.Found> searches,
            BrokenBridge.Fault... faults) {
        List<BrokenBridge> cases = new ArrayList<>();
        if (running.operatingPoint().speed() > 0 && numbers.alternator().phaseInductance() > 0) {
            for (BrokenBridge.Fault fault : faults) {
                cases.add(of(running, fault, searches.get(search(numbers, running, fault))));
            }
        }
        return cases;
    }

    private static BridgeSearch search(PlantNumbers numbers, Running running, BrokenBridge.Fault fault) {
        AlternatorNumbers a = numbers.alternator();
        return new BridgeSearch(
                switch (fault) {
                    case PHASE_OPEN -> BridgeFault.PHASE_OPEN;
                    case DIODE_OPEN -> BridgeFault.DIODE_OPEN;
                    case DIODE_SHORT -> BridgeFault.DIODE_SHORT;
                },
                WarmAlternator.of(a.warmedTo(running.operatingPoint().windingTemperature())),
                new DiodeLine(
                        numbers.rectifier().threshold(), numbers.rectifier().slopeResistance()),
                SteppedStart.bus(numbers, running.operatingPoint()),
                numbers.busResistance().phase(),
                new RunnerCharacteristic(numbers.runner(), numbers.water().density(), running.water()),
                new BridgeSearch.Idle(
                        a.noLoadTorque(), a.noLoadTorquePerSpeed(), a.phaseResistance(), a.phaseInductance()),
                a.gearRatio(),
                running.operatingPoint().speed());
    }

    private static BrokenBridge of(Running running, BrokenBridge.Fault fault, BridgeSearch.Found found) {
        BridgeWaveform wave = found.wave();
        double before = running.operatingPoint().directCurrent();
        return new BrokenBridge(
                running.nozzles(),
                fault,
                found.held(),
                found.speed(),
                wave.directCurrent(),
                before > 0 ? wave.directCurrent() / before : 0,
                wave.phaseCurrentRms(),
                wave.diodeCurrent(),
                wave.rippleAtFrequency(),
                wave.rippleAtTwice(),
                wave.greatestDirectVoltage(),
                running.operatingPoint().tracking() == null ? wave.greatestDirectVoltage() : running.batteryVoltage());
    }
}
