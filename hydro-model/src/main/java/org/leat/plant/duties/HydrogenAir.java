package org.leat.plant.duties;

import java.util.Comparator;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.catalogue.tables.CellProperty;
import org.leat.design.Chemistry;
import org.leat.electrics.GasCurrent;
import org.leat.electrics.HydrogenVentilation;
import org.leat.law.Answer;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.Cases;
import org.leat.plant.numbers.BatteryNumbers;

/**
 * Air that keeps the hydrogen of a lead battery from exploding.
 *
 * <p>The gas is that of the highest charge stage that is set: absorption, or equalising, in which it follows the charging current
 * up to 60 mA for each Ah (EN 50272-3, read in a reproduction); or all the turbine gives where nothing limits the voltage.
 *
 * @param gasCurrent of the whole bank that makes hydrogen, A
 * @param equalising whether equalising is what makes the most of it
 * @param airFlow that a fan must move, m³/s
 * @param openingArea that each of two openings must have where there is no fan, m²
 */
public record HydrogenAir(double gasCurrent, boolean equalising, double airFlow, double openingArea) {

    /** {@return what a lead battery needs} The plant is solved; {@link IllegalArgumentException} for other chemistries. */
    public static HydrogenAir of(Cases cases) {
        BatteryNumbers battery = cases.numbers().battery();
        double absorption = HydrogenVentilation.gasCurrent(
                CellChemistryCatalogue.usual(battery.chemistry(), CellProperty.BOOST_GAS_CURRENT), battery.capacity());
        BatteryFull most = cases.batteryFull().stream()
                .max(Comparator.comparingDouble(BatteryFull::turbineCurrent))
                .orElseThrow();
        boolean set = cases.numbers().regulator().equalisingVoltage().isPresent();
        double equalised = set ? unlimited(battery, most.turbineCurrent()) : 0;
        double gas = Math.max(absorption, equalised);
        if (most.answer() == BatteryFull.Answer.OVERCHARGED) {
            gas = Math.max(gas, most.turbineCurrent());
        }
        double flow = HydrogenVentilation.airFlow(battery.cellsInSeries(), gas);
        return new HydrogenAir(
                gas, equalised > absorption && gas == equalised, flow, HydrogenVentilation.openingArea(flow));
    }

    private static double unlimited(BatteryNumbers battery, double charging) {
        GasCurrent.Kind kind = battery.chemistry() == Chemistry.FLOODED_LEAD_ACID
                ? GasCurrent.Kind.VENTED
                : GasCurrent.Kind.VALVE_REGULATED;
        Answer gas = GasCurrent.ofString(kind, GasCurrent.Stage.UNLIMITED, battery.capacity(), charging);
        return gas instanceof Answer.Value value ? value.value() : charging;
    }

    /**
     * {@return distance from a vent within which nothing may glow or spark, m; IEC 62485-2, clause 7.6}
     *
     * @param cells that gas through that vent
     * @param strings that share the gas current
     */
    public double sparkDistance(int cells, int strings) {
        return HydrogenVentilation.safeDistance(cells, gasCurrent / strings);
    }
}
