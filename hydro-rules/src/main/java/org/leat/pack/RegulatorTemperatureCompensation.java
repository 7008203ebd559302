package org.leat.pack;

import java.util.List;
import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.catalogue.CellProperty;
import org.leat.catalogue.Spread;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.ChargeRegulator;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.VoltagePerTemperature;

/** Charge voltage of lead against temperature. */
final class RegulatorTemperatureCompensation implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("regulator/temperature-compensation", Level.WARNING)
            .canFailAs(Level.ERROR)
            .title("charge voltage of lead against temperature")
            .why("Cold lead needs more volts, warm lead fewer. Without compensation the winter leaves it hungry and the"
                    + " summer boils it; a compensation of the wrong sign does both at once.")
            .formula("compensation of one cell within the chemistry's range, negative")
            .judged("as set")
            .source("IEEE 1361, −4 to −5 mV/K of a cell (from memory); −3 mV/K in a battery education text")
            .message("inside", "swing")
            .message("outside", "swing")
            .message("wrong-sign", "swing")
            .message("not-lead")
            .message("none")
            .message("set", "rating")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Spot spot = j.at("/regulator/temperature-compensation");
        ChargeRegulator regulator = j.design().regulator();
        if (regulator == null) {
            return List.of(spot.notApplicable("none"));
        }
        Double set = Rated.si(regulator.temperatureCompensation());
        if (!Lead.is(j) && (set == null || set == 0)) {
            return List.of(spot.notApplicable("not-lead"));
        }
        if (set == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        Spread range = CellChemistryCatalogue.find(
                        j.design().battery().chemistry(), CellProperty.TEMPERATURE_COMPENSATION)
                .orElseThrow();
        SiteNumbers site = j.plant().numbers().site();
        double swing = range.usual()
                * j.design().battery().cellsInSeries()
                * (site.lowestAirTemperature() - site.highestAirTemperature());
        boolean wrong = set > 0;
        return List.of(spot.compare(
                wrong ? Level.ERROR : Level.WARNING,
                Comparison.within(set, range.low() * 1.001, range.high() * 0.999, QuantityKind.VOLTAGE_PER_TEMPERATURE),
                "inside",
                wrong ? "wrong-sign" : "outside",
                Arg.of("swing", swing, QuantityKind.VOLTAGE)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Rated.larger(
                this,
                j,
                failure,
                "set",
                "mV/K",
                VoltagePerTemperature.class,
                Lead.is(j) ? new double[] {-4, -3, -5} : new double[] {0});
    }
}
