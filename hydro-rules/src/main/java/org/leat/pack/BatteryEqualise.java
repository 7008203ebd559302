package org.leat.pack;

import java.util.List;
import java.util.stream.Stream;
import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.catalogue.CellProperty;
import org.leat.catalogue.Spread;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.ChargeRegulator;
import org.leat.pack.Search.Candidate;
import org.leat.quantity.QuantityKind;

/** Equalising set on cells that must not be equalised. */
final class BatteryEqualise implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("battery/equalise", Level.ERROR)
            .title("equalising set on cells that must not be equalised")
            .why(
                    "Equalising is deliberate overcharge. Sealed lead vents water it cannot get back; lithium catches fire.")
            .formula("no equalising voltage, except for open lead cells within their range")
            .judged("as set")
            .source("battery makers' answers to users; ranges as tabled with the cells' properties")
            .message("off")
            .message("inside")
            .message("outside")
            .message("sealed")
            .message("none")
            .message("switch-off")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Spot spot = j.at("/regulator/equalising-voltage");
        ChargeRegulator regulator = j.design().regulator();
        if (regulator == null) {
            return List.of(spot.notApplicable("none"));
        }
        Double set = Rated.si(regulator.equalisingVoltage());
        if (set == null) {
            // where no set point is written down at all, nobody knows that this one is off
            return List.of(regulator.absorptionVoltage() == null ? spot.notGiven(spot.path()) : spot.pass("off"));
        }
        Spread range = CellChemistryCatalogue.find(j.design().battery().chemistry(), CellProperty.EQUALISING_VOLTAGE)
                .orElse(null);
        int cells = j.design().battery().cellsInSeries();
        return List.of(
                range == null
                        ? spot.fail("sealed")
                        : spot.compare(
                                Comparison.within(set, cells * range.low(), cells * range.high(), QuantityKind.VOLTAGE),
                                "inside",
                                "outside"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Search.first(this, j, failure, Stream.of(Candidate.of("switch-off", new Edit(failure.path(), null))))
                .map(List::of)
                .orElse(List.of());
    }
}
