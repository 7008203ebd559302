package org.leat.plant.cases;

import org.leat.electrics.ReverseVoltage;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solve.RunnerCharacteristic;

/** A plant whose load is lost. Iron and friction of the alternator, which would slow it a little, are left out. */
final class LoadLostSolver {

    private LoadLostSolver() {}

    static LoadLost of(PlantNumbers numbers, Running running) {
        AlternatorNumbers alternator = numbers.alternator();
        RunnerCharacteristic runner =
                new RunnerCharacteristic(numbers.runner(), numbers.water().density(), running.water());
        double speed = runner.runawaySpeed();
        double alternatorSpeed = speed * alternator.gearRatio();
        double cold = alternator.coldMagnetFactor();
        double peak = cold * alternator.peakLineVoltage(alternatorSpeed);
        return new LoadLost(
                running.nozzles(),
                speed,
                alternatorSpeed,
                alternator.polePairs() * alternatorSpeed / (2 * Math.PI),
                peak,
                peak,
                BatteryNode.lasting(numbers, peak),
                ReverseVoltage.inrush(peak));
    }
}
