package org.leat.pack.inverter;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricPotential;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.catalogue.tables.CellProperty;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.ChargeRegulator;
import org.leat.design.Inverter;
import org.leat.design.VoltageRange;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.Inverters;
import org.leat.pack.kit.VoltageCause;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.quantity.Si;

/** The battery's whole range against the inverter's input. */
final class InputWindow {

    static final Rule RULE = Rule.of(
                    "inverter/input-window", ERROR, "the battery's whole range against the inverter's input")
            .why(
                    "An inverter that starts at the battery's rest may trip at its absorption voltage, just when there is plenty, or"
                            + " go on drawing from a battery that is empty.")
            .formula("cut-off voltage of the bank ≥ least input; highest charging voltage ≤ greatest input")
            .judged(
                    "battery empty; running, battery full and equalising, the nozzle set with the highest battery voltage")
            .source(COMMON_PRACTICE)
            .passes("low-enough", "An empty battery has {value}; the inverter works down to {limit}.")
            .fails("starts-too-high", "An empty battery has {value}; the inverter works only with {limit}.")
            .passes("high-enough", "The battery reaches {value} ({cause}).")
            .fails("trips", "The battery reaches {value} ({cause}); the inverter trips above {limit}.")
            .notApplicable("none", Inverters.NONE)
            .judgeAll(InputWindow::judge)
            .leastWayOut("other-range", "An inverter that works to {rating}.", InputWindow::otherRange)
            .advice("limit", "A charge regulator and a dump load that limit the battery's voltage.", InputWindow::limit)
            .build();

    private InputWindow() {}

    private static List<Outcome> judge(Judgement j) {
        Inverter inverter = j.design().inverter();
        Spot spot = j.at("/inverter/input-voltage");
        if (inverter == null) {
            return List.of(Inverters.missing(j, spot));
        }
        VoltageRange range = spot.given(inverter.inputVoltage());
        HighestChargingVoltage highest = HighestChargingVoltage.of(j.solved());
        return List.of(
                spot.at("/inverter/input-voltage/from")
                        .during("battery-empty")
                        .saying("low-enough", "starts-too-high")
                        .atLeast(least(j), Si.of(range.from()), VOLTAGE),
                spot.at("/inverter/input-voltage/to")
                        .during(highest.situation())
                        .with(Arg.phrase("cause", highest.cause()))
                        .saying("high-enough", "trips")
                        .atMost(highest.volts(), Si.of(range.to()), VOLTAGE));
    }

    private static double least(Judgement j) {
        BatteryNumbers battery = j.numbers().battery();
        double empty = battery.cellsInSeries()
                * CellChemistryCatalogue.usual(battery.chemistry(), CellProperty.LOW_VOLTAGE_DISCONNECT);
        ChargeRegulator regulator = j.design().regulator();
        return regulator == null ? empty : Si.of(regulator.cutOffVoltage(), empty);
    }

    private static Stream<Change> otherRange(Judgement j, Outcome.Fail failure) {
        if (nothingLimits(j, failure)) {
            return Stream.empty();
        }
        double rating = failure.says("trips") ? Math.ceil(failure.value()) : Math.floor(failure.value());
        return Stream.of(FieldChanges.rated(failure.path(), rating, "V", ElectricPotential.class));
    }

    private static Stream<Change> limit(Judgement j, Outcome.Fail failure) {
        return nothingLimits(j, failure) ? Stream.of(Change.advice()) : Stream.empty();
    }

    private static boolean nothingLimits(Judgement j, Outcome.Fail failure) {
        return failure.says("trips") && HighestChargingVoltage.of(j.solved()).cause() == VoltageCause.OVERCHARGED;
    }
}
