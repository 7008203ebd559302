package org.leat.pack;

import java.util.List;
import javax.measure.quantity.ElectricPotential;
import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.catalogue.CellProperty;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.ChargeRegulator;
import org.leat.design.Inverter;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** The battery's whole range against the inverter's input. */
final class InverterInputWindow implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("inverter/input-window", Level.ERROR)
            .title("the battery's whole range against the inverter's input")
            .why(
                    "An inverter that starts at the battery's rest may trip at its absorption voltage, just when there is plenty, or"
                            + " go on drawing from a battery that is empty.")
            .formula("cut-off voltage of the bank ≥ least input; highest charging voltage ≤ greatest input")
            .judged(
                    "battery empty; running, battery full and equalising, the nozzle set with the highest battery voltage")
            .source(RuleCard.COMMON_PRACTICE)
            .message("low-enough")
            .message("starts-too-high")
            .message("high-enough", "cause")
            .message("trips", "cause")
            .message("limit")
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
        HighestChargingVoltage highest = HighestChargingVoltage.of(j);
        return List.of(
                j.at("/inverter/input-voltage/from")
                        .during("battery-empty")
                        .compare(
                                Comparison.atLeast(
                                        least, Si.of(inverter.inputVoltage().from()), QuantityKind.VOLTAGE),
                                "low-enough",
                                "starts-too-high"),
                j.at("/inverter/input-voltage/to")
                        .during(highest.situation())
                        .compare(
                                Comparison.atMost(
                                        highest.volts(),
                                        Si.of(inverter.inputVoltage().to()),
                                        QuantityKind.VOLTAGE),
                                "high-enough",
                                "trips",
                                Arg.phrase("cause", highest.cause())));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        if (comparison == null) {
            return List.of();
        }
        if (failure.message().id().equals("trips")
                && HighestChargingVoltage.of(j).cause().equals("cause.overcharged")) {
            return List.of(j.advice("limit"));
        }
        boolean lower = comparison.sense() == Comparison.Sense.AT_LEAST;
        double rating = lower ? Math.floor(comparison.value()) : Math.ceil(comparison.value());
        return Rated.larger(this, j, failure, "other-range", "V", ElectricPotential.class, rating);
    }
}
