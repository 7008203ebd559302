package org.leat.pack.battery;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.catalogue.tables.CellProperty;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.BatteryBank;
import org.leat.design.BatteryManagement;

/** The coldest day against charging. */
final class TemperatureWindow {

    static final Rule RULE = Rule.of("battery/temperature-window", ERROR, "the coldest day against charging")
            .why("Lithium charged below freezing plates metal inside its cells and is a fire waiting; a stream goes on"
                    + " charging all night long. Flat lead freezes and bursts.")
            .formula(
                    "lowest temperature of the battery's room ≥ lowest charging temperature; or heated, or a management that"
                            + " opens on cold")
            .judged("coldest day")
            .source("no charging of lithium below 0 °C: makers' data; lead −10 °C: common practice")
            .passes("warm-enough", "The battery gets no colder than {value}.")
            .passes("heated", "The battery is kept warm.")
            .passes(
                    "management",
                    "The management stops charging on cold; what that does to the turbine is judged by"
                            + " battery/management-opens.")
            .fails("too-cold", "The battery gets as cold as {value}; charging takes {limit}.")
            .judge(TemperatureWindow::judge)
            .wayOut("heat", "Heat it, or set it where it does not freeze.", Change.of("/battery/heated", true))
            .build();

    private TemperatureWindow() {}

    private static Outcome judge(Judgement j) {
        BatteryBank battery = j.design().battery();
        Spot spot = j.at("/battery/lowest-temperature").during("coldest-day");
        if (Boolean.TRUE.equals(battery.heated())) {
            return spot.says("heated");
        }
        double coldest = spot.si(battery.lowestTemperature());
        double least = CellChemistryCatalogue.usual(battery.chemistry(), CellProperty.LOWEST_CHARGE_TEMPERATURE);
        BatteryManagement management = battery.management();
        return coldest < least && management != null && Boolean.TRUE.equals(management.opensOnCold())
                ? spot.says("management")
                : spot.atLeast(coldest, least, TEMPERATURE);
    }
}
