package org.leat.pack;

import org.leat.check.Judgement;
import org.leat.plant.solve.OperatingPoint;

/** What is lost in the bridge. */
final class Diodes {

    private Diodes() {}

    /**
     * {@return power lost in the six diodes, W} Two thresholds carry the direct current; each lead's current passes one
     * diode at a time.
     */
    static double loss(Judgement j, OperatingPoint operatingPoint) {
        double current = operatingPoint.phaseCurrent();
        return 2 * j.plant().numbers().rectifier().threshold() * operatingPoint.directCurrent()
                + 3 * j.plant().numbers().rectifier().slopeResistance() * current * current;
    }
}
