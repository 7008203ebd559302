package org.leat.pack.battery;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.catalogue.tables.CellProperty;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.ChargeRegulator;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.Regulators;
import org.leat.quantity.Si;

/** Equalising set on cells that must not be equalised. */
final class Equalise {

    static final Rule RULE = Rule.of("battery/equalise", ERROR, "equalising set on cells that must not be equalised")
            .why(
                    "Equalising is deliberate overcharge. Sealed lead vents water it cannot get back; lithium catches fire.")
            .formula("no equalising voltage, except for open lead cells within their range")
            .judged("as set")
            .source("battery makers' answers to users; ranges as tabled with the cells' properties")
            .passes("off", "No equalising is set.")
            .passes("inside", "Equalising is set to {value}.")
            .fails("outside", "Equalising is set to {value}; this bank stands {limit}.")
            .fails("sealed", "Equalising is set, and these cells must never be equalised.")
            .notApplicable("none", Regulators.NONE)
            .judge(Equalise::judge)
            .wayOut("switch-off", "Switch equalising off.", FieldChanges.to(null))
            .build();

    private Equalise() {}

    private static Outcome judge(Judgement j) {
        Spot spot = j.at("/regulator/equalising-voltage");
        ChargeRegulator regulator = Regulators.by(j);
        if (regulator == null) {
            return spot.says("none");
        }
        if (regulator.equalisingVoltage() == null) {
            // where no set point is written down at all, nobody knows that this one is off
            return regulator.absorptionVoltage() == null ? spot.notGiven(spot.path()) : spot.says("off");
        }
        double set = Si.of(regulator.equalisingVoltage());
        int cells = j.design().battery().cellsInSeries();
        return CellChemistryCatalogue.find(j.design().battery().chemistry(), CellProperty.EQUALISING_VOLTAGE)
                .map(cell ->
                        spot.saying("inside", "outside").within(set, cells * cell.low(), cells * cell.high(), VOLTAGE))
                .orElseGet(() -> spot.says("sealed"));
    }
}
