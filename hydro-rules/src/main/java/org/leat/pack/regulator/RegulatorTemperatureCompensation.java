package org.leat.pack.regulator;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.VOLTAGE;
import static org.leat.quantity.QuantityKind.VOLTAGE_PER_TEMPERATURE;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.leat.catalogue.rows.Spread;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.catalogue.tables.CellProperty;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.ChargeRegulator;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.LeadAcid;
import org.leat.pack.kit.Regulators;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.quantity.Quantities.VoltagePerTemperature;
import org.leat.quantity.Si;

/** Charge voltage of lead against temperature. */
final class RegulatorTemperatureCompensation {

    static final Rule RULE = Rule.of(
                    "regulator/temperature-compensation", WARNING, "charge voltage of lead against temperature")
            .canFailAs(ERROR)
            .why("Cold lead needs more volts, warm lead fewer. Without compensation the winter leaves it hungry and the"
                    + " summer boils it; a compensation of the wrong sign does both at once.")
            .formula("compensation of one cell within the chemistry's range, negative")
            .judged("as set")
            .source("IEEE 1361, −4 to −5 mV/K of a cell (from memory); −3 mV/K in a battery education text")
            .passes(
                    "inside",
                    "The charge voltage follows the temperature with {value} a cell ({swing} of the bank over the"
                            + " year).")
            .fails(
                    "outside",
                    "The charge voltage follows the temperature with {value} a cell; this chemistry wants {limit}"
                            + " ({swing} of the bank over the year).")
            .fails("wrong-sign", "The charge voltage rises with the temperature ({value} a cell): it must fall.")
            .notApplicable("not-lead", "Not judged: only lead wants it.")
            .notApplicable("none", Regulators.NONE)
            .judge(RegulatorTemperatureCompensation::judge)
            .leastWayOut("set", "A compensation of {rating} a cell.", RegulatorTemperatureCompensation::set)
            .build();

    private RegulatorTemperatureCompensation() {}

    private static Outcome judge(Judgement j) {
        Spot spot = j.at("/regulator/temperature-compensation");
        ChargeRegulator regulator = Regulators.by(j);
        if (regulator == null) {
            return spot.says("none");
        }
        if (!LeadAcid.is(j) && Si.of(regulator.temperatureCompensation(), 0) == 0) {
            return spot.says("not-lead");
        }
        double set = spot.si(regulator.temperatureCompensation());
        Spread range = CellChemistryCatalogue.find(
                        j.design().battery().chemistry(), CellProperty.TEMPERATURE_COMPENSATION)
                .orElseThrow();
        SiteNumbers site = j.numbers().site();
        double swing = range.usual()
                * j.design().battery().cellsInSeries()
                * (site.lowestAirTemperature() - site.highestAirTemperature());
        return spot.as(set > 0 ? ERROR : WARNING)
                .saying("inside", set > 0 ? "wrong-sign" : "outside")
                .with("swing", swing, VOLTAGE)
                .within(set, range.low() * 1.001, range.high() * 0.999, VOLTAGE_PER_TEMPERATURE);
    }

    private static Stream<Change> set(Judgement j, Outcome.Fail failure) {
        return (LeadAcid.is(j) ? DoubleStream.of(-4, -3, -5) : DoubleStream.of(0))
                .mapToObj(set -> FieldChanges.rated(failure.path(), set, "mV/K", VoltagePerTemperature.class));
    }
}
