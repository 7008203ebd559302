package org.leat.plant.derive;

import java.util.Optional;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.rows.Spread;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.catalogue.tables.CellProperty;
import org.leat.design.BatteryBank;
import org.leat.design.ChargeRegulator;
import org.leat.design.Chemistry;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Battery of a plant. */
final class BatteryDerivation {

    private BatteryDerivation() {}

    static BatteryNumbers of(BatteryBank bank, @Nullable ChargeRegulator regulator, Assume assume) {
        Chemistry chemistry = bank.chemistry();
        int cells = bank.cellsInSeries();
        double capacity = Si.of(bank.capacity());
        double charge = assume.stated(
                bank.stateOfCharge(),
                "/battery/state-of-charge",
                QuantityKind.RATIO,
                0.6,
                0.2,
                1,
                "assumed/state-of-charge");
        double clamped = Math.min(1, Math.max(0, charge));
        double resistance = assume.tabled(
                bank.internalResistance(),
                "/battery/internal-resistance",
                QuantityKind.RESISTANCE,
                CellChemistryCatalogue.internalResistance(chemistry, cells, capacity),
                "assumed/cell-resistance");
        Spread current = CellChemistryCatalogue.greatestChargeCurrent(chemistry, capacity);
        Amount currentLimit = Amount.of(assume.tabled(
                bank.chargeCurrentLimit(),
                "/battery/charge-current-limit",
                QuantityKind.CURRENT,
                current,
                "assumed/chemistry"));
        Amount voltageLimit = voltage(
                bank.chargeVoltageLimit(),
                "/battery/charge-voltage-limit",
                chemistry,
                CellProperty.HIGHEST_CHARGE_VOLTAGE,
                cells,
                assume);
        Amount absorption = voltage(
                regulator == null ? null : regulator.absorptionVoltage(),
                "/regulator/absorption-voltage",
                chemistry,
                CellProperty.ABSORPTION_VOLTAGE,
                cells,
                assume);
        double resting = cells * CellChemistryCatalogue.openCircuitVoltage(chemistry, clamped);
        return new BatteryNumbers(
                chemistry,
                cells,
                capacity,
                clamped,
                resting,
                resistance,
                currentLimit,
                voltageLimit,
                absorption.or(resting));
    }

    private static Amount voltage(
            @Nullable Quantity<?> stated,
            String path,
            Chemistry chemistry,
            CellProperty property,
            int cells,
            Assume assume) {
        Optional<Spread> tabled = CellChemistryCatalogue.find(chemistry, property);
        if (stated == null && tabled.isEmpty()) {
            return Amount.missing(path, "unknown/chemistry-without");
        }
        Spread cell = tabled.orElse(new Spread(0, 0, 0, Assume.COMMON_PRACTICE));
        return Amount.of(assume.tabled(
                stated,
                path,
                QuantityKind.VOLTAGE,
                new Spread(cells * cell.low(), cells * cell.usual(), cells * cell.high(), cell.source()),
                "assumed/chemistry"));
    }
}
