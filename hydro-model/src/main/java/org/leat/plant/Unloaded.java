package org.leat.plant;

import org.leat.electrics.ReverseVoltage;

/** A plant whose load is lost. Iron and friction of the alternator, which would slow it a little, are left out. */
final class Unloaded {

    private Unloaded() {}

    static LoadLost of(PlantNumbers numbers, Running running) {
        AlternatorNumbers alternator = numbers.alternator();
        Wheel wheel = new Wheel(numbers.runner(), numbers.water().density(), running.water());
        double speed = wheel.runawaySpeed();
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
                ReverseVoltage.inrush(peak));
    }
}
