package org.leat.plant.cases;

import org.leat.design.RegulatorKind;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;

/**
 * The battery's node: behind a tracking or series regulator a node of its own, else the bridge's.
 *
 * <p>A regulator that works holds it at its highest set point, with the battery and without it. A series one is a switch that
 * is closed while it charges: when the battery opens under load, its node sees the bridge's moment before the switch opens.
 */
final class BatteryNode {

    private BatteryNode() {}

    /** {@return what a working regulator lets the node rise to, V: absorption, or equalising where that is higher} */
    static double held(PlantNumbers numbers) {
        double absorption = numbers.battery().absorptionVoltage();
        return Math.max(absorption, numbers.regulator().equalisingVoltage().orElse(absorption));
    }

    /** {@return voltage of the node while the bridge has one, V} */
    static double lasting(PlantNumbers numbers, double bridge) {
        return numbers.regulator().divides() ? held(numbers) : bridge;
    }

    /** {@return voltage of the node for a moment while the bridge has one, V} */
    static Amount moment(PlantNumbers numbers, Amount bridge) {
        return numbers.regulator().kind() == RegulatorKind.TRACKING ? Amount.of(held(numbers)) : bridge;
    }
}
