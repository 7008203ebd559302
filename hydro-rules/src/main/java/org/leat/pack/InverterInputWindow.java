package org.leat.pack;

import java.util.List;
import javax.measure.quantity.ElectricPotential;
import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.catalogue.CellProperty;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.ChargeRegulator;
import org.leat.design.Inverter;
import org.leat.plant.BatteryNumbers;
import org.leat.plant.Running;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** The battery's whole range against the inverter's input. */
final class InverterInputWindow implements Rule {

    private static final RuleCard CARD = RuleCard.of("inverter/input-window", Level.ERROR)
            .title("the battery's whole range against the inverter's input")
            .why(
                    "An inverter that starts at the battery's rest may trip at its absorption voltage, just when there is plenty, or"
                            + " go on drawing from a battery that is empty.")
            .formula("cut-off voltage of the bank ≥ least input; highest charging voltage ≤ greatest input")
            .judged("battery empty; running and battery full, the nozzle set with the highest battery voltage")
            .source(RuleCard.COMMON_PRACTICE)
            .message("low-enough")
            .message("starts-too-high")
            .message("high-enough")
            .message("trips")
            .message("none")
            .message("other-range", "rating")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Inverter inverter = j.design().inverter();
        if (inverter == null) {
            return List.of(Inverters.missing(j, "/inverter/input-voltage", "none"));
        }
        if (inverter.inputVoltage() == null) {
            return List.of(j.at("/inverter/input-voltage").notGiven("/inverter/input-voltage"));
        }
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        BatteryNumbers battery = j.plant().numbers().battery();
        double empty = battery.cellsInSeries()
                * CellChemistryCatalogue.usual(battery.chemistry(), CellProperty.LOW_VOLTAGE_DISCONNECT);
        ChargeRegulator regulator = j.design().regulator();
        double least = regulator == null ? empty : Si.of(regulator.cutOffVoltage(), empty);
        Running running =
                Worst.most(j.cases().running(), r -> r.operation().bus().battery());
        double most = Math.max(running.operation().bus().battery(), battery.absorptionVoltage());
        if (regulator != null) {
            most = Math.max(most, Si.of(regulator.equalisingVoltage(), most));
        }
        return List.of(
                j.at("/inverter/input-voltage/from")
                        .during("battery-empty")
                        .compare(
                                Comparison.atLeast(
                                        least, Si.of(inverter.inputVoltage().from()), QuantityKind.VOLTAGE),
                                "low-enough",
                                "starts-too-high"),
                j.at("/inverter/input-voltage/to")
                        .during("battery-full")
                        .compare(
                                Comparison.atMost(
                                        most, Si.of(inverter.inputVoltage().to()), QuantityKind.VOLTAGE),
                                "high-enough",
                                "trips"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        if (comparison == null) {
            return List.of();
        }
        boolean lower = comparison.sense() == Comparison.Sense.AT_LEAST;
        double rating = lower ? Math.floor(comparison.value()) : Math.ceil(comparison.value());
        return Rated.larger(this, j, failure, "other-range", "V", ElectricPotential.class, rating);
    }
}
