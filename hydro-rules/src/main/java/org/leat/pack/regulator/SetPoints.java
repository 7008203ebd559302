package org.leat.pack.regulator;

import static org.leat.catalogue.tables.CellProperty.ABSORPTION_VOLTAGE;
import static org.leat.catalogue.tables.CellProperty.FLOAT_VOLTAGE;
import static org.leat.catalogue.tables.CellProperty.HIGHEST_CHARGE_VOLTAGE;
import static org.leat.catalogue.tables.CellProperty.LOW_VOLTAGE_DISCONNECT;
import static org.leat.catalogue.tables.CellProperty.NOMINAL_VOLTAGE;
import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.rows.Spread;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.catalogue.tables.CellProperty;
import org.leat.check.Change;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.BatteryBank;
import org.leat.design.ChargeRegulator;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.Regulators;
import org.leat.quantity.Si;

/** Set points of the charge regulator against chemistry and number of cells. */
final class SetPoints {

    static final Rule RULE = Rule.of(
                    "regulator/set-points", ERROR, "set points of the charge regulator against chemistry and cells")
            .why(
                    "A tenth of a volt a cell too much gasses lead dry and opens or ignites lithium; too little starves lead. The"
                            + " default of a regulator is for somebody else's battery.")
            .formula(
                    "each set point / cells in series within the chemistry's range; above it an error, below it a warning")
            .judged("as set")
            .source("ranges by chemistry: makers' data and battery handbooks, as tabled with the cells' properties")
            .passes("inside", "The set point is {value}, {cell} a cell.")
            .fails("outside", "The set point is {value}, {cell} a cell; this bank wants {limit}.")
            .notApplicable("none-for-chemistry", "Cells of this chemistry must not be held at such a set point.")
            .notApplicable("none", Regulators.NONE)
            .judgeAll(SetPoints::judge)
            .leastWayOut("set", "A set point of {rating}.", ChangesForText.only("outside", SetPoints::inside))
            .wayOut("leave-out", "No such set point.", ChangesForText.only("none-for-chemistry", FieldChanges.to(null)))
            .build();

    private SetPoints() {}

    private static List<Outcome> judge(Judgement j) {
        ChargeRegulator regulator = Regulators.by(j);
        if (regulator == null) {
            return List.of(j.at("/regulator").says("none"));
        }
        Spot absorption = j.at("/regulator/absorption-voltage");
        Spot floating = j.at("/regulator/float-voltage");
        Spot cutOff = j.at("/regulator/cut-off-voltage");
        BatteryBank bank = j.design().battery();
        return j.all(
                () -> judge(
                        absorption, regulator.absorptionVoltage(), bank, ABSORPTION_VOLTAGE, HIGHEST_CHARGE_VOLTAGE),
                () -> judge(floating, regulator.floatVoltage(), bank, FLOAT_VOLTAGE, FLOAT_VOLTAGE),
                () -> judge(cutOff, regulator.cutOffVoltage(), bank, LOW_VOLTAGE_DISCONNECT, NOMINAL_VOLTAGE));
    }

    private static Outcome judge(
            Spot spot,
            @Nullable Quantity<ElectricPotential> stated,
            BatteryBank bank,
            CellProperty lowest,
            CellProperty highest) {
        Optional<Spread> low = CellChemistryCatalogue.find(bank.chemistry(), lowest);
        Optional<Spread> high = CellChemistryCatalogue.find(bank.chemistry(), highest);
        if (low.isEmpty() || high.isEmpty()) {
            Spot none = spot.saying("inside", "none-for-chemistry");
            return stated == null ? none.says("none-for-chemistry") : none.holds(false);
        }
        double set = spot.si(stated);
        int cells = bank.cellsInSeries();
        double most = cells * high.get().high();
        if (highest == HIGHEST_CHARGE_VOLTAGE) {
            most = Math.min(most, Si.of(bank.chargeVoltageLimit(), most));
        }
        // a tenth of a per cent of grace for set points that are rounded
        double least = Math.min(0.999 * cells * low.get().low(), most);
        return spot.as(set > 1.001 * most ? ERROR : WARNING)
                .with("cell", set / cells, VOLTAGE)
                .within(set, least, 1.001 * most, VOLTAGE);
    }

    private static Stream<Change> inside(Judgement j, Outcome.Fail failure) {
        Comparison range = failure.compared();
        double middle = Math.rint(5 * (range.low() + range.high())) / 10;
        return Stream.of(middle, range.low())
                .map(set -> FieldChanges.rated(failure.path(), set, "V", ElectricPotential.class));
    }
}
