package org.leat.plant.duties;

import org.leat.electrics.DiodeLine;
import org.leat.electrics.DiodeLoss;
import org.leat.electrics.JunctionTemperature;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solved.OperatingPoint;

/**
 * Heat in the six diodes of the bridge while running.
 *
 * @param loss W
 * @param air as hot as it gets, K
 */
public record BridgeHeat(double loss, double air) {

    /** {@return the heat, see {@link DiodeLoss}} */
    public static BridgeHeat of(PlantNumbers numbers, Running running) {
        OperatingPoint point = running.operatingPoint();
        DiodeLine diode = new DiodeLine(
                numbers.rectifier().threshold(), numbers.rectifier().slopeResistance());
        return new BridgeHeat(
                DiodeLoss.of(diode, point.directCurrent(), point.phaseCurrent()),
                numbers.site().highestAirTemperature());
    }

    /** {@return temperature inside the diodes, K} Thermal resistance from junction to air in K/W. */
    public double junction(double thermalResistance) {
        return JunctionTemperature.of(air, loss, thermalResistance);
    }
}
