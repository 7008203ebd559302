package org.leat.plant;

/** A plant whose load is lost. Iron and friction of the alternator, which would slow it a little, are left out. */
final class Unloaded {

    /** Highest peak seen in circuit simulation where a battery opens under load, over the open-circuit peak. */
    private static final double OPENED_UNDER_LOAD = 1.26;

    /** Highest peak seen in circuit simulation at an empty capacitor, over the open-circuit peak. */
    private static final double EMPTY_CAPACITOR = 1.61;

    private Unloaded() {}

    static LoadLost of(PlantNumbers numbers, Running running) {
        AlternatorNumbers alternator = numbers.alternator();
        Wheel wheel = new Wheel(numbers.runner(), numbers.water().density(), running.water());
        double speed = wheel.runawaySpeed();
        double alternatorSpeed = speed * alternator.gearRatio();
        double cold = alternator.coldMagnetFactor();
        double peak = cold * alternator.peakLineVoltage(alternatorSpeed);
        double loaded = cold * alternator.peakLineVoltage(running.operation().alternatorSpeed());
        return new LoadLost(
                running.nozzles(),
                speed,
                alternatorSpeed,
                alternator.polePairs() * alternatorSpeed / (2 * Math.PI),
                peak,
                peak,
                OPENED_UNDER_LOAD * loaded,
                EMPTY_CAPACITOR * peak);
    }
}
