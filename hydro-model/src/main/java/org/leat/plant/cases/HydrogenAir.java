package org.leat.plant.cases;

import java.util.Comparator;
import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.catalogue.CellProperty;
import org.leat.electrics.HydrogenVentilation;
import org.leat.plant.numbers.BatteryNumbers;

/**
 * Air that keeps the hydrogen of a lead battery from exploding.
 *
 * @param gasCurrent that makes hydrogen, A: at absorption voltage, or all the turbine gives where nothing limits the voltage
 * @param airFlow that a fan must move, m³/s
 * @param openingArea that each of two openings must have where there is no fan, m²
 */
public record HydrogenAir(double gasCurrent, double airFlow, double openingArea) {

    /** {@return what a lead battery needs} The plant is solved; {@link IllegalArgumentException} for other chemistries. */
    public static HydrogenAir of(Cases cases) {
        BatteryNumbers battery = cases.numbers().battery();
        double gas = HydrogenVentilation.gasCurrent(
                CellChemistryCatalogue.usual(battery.chemistry(), CellProperty.BOOST_GAS_CURRENT), battery.capacity());
        BatteryFull most = cases.batteryFull().stream()
                .max(Comparator.comparingDouble(BatteryFull::turbineCurrent))
                .orElseThrow();
        if (most.answer() == BatteryFull.Answer.OVERCHARGED) {
            gas = Math.max(gas, most.turbineCurrent());
        }
        double flow = HydrogenVentilation.airFlow(battery.cellsInSeries(), gas);
        return new HydrogenAir(gas, flow, HydrogenVentilation.openingArea(flow));
    }
}
