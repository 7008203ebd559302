package org.leat.pack;

import java.util.List;
import java.util.stream.Stream;
import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.catalogue.CellProperty;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.BatteryBank;
import org.leat.design.BatteryManagement;
import org.leat.pack.Search.Candidate;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** The coldest day against charging. */
final class BatteryTemperatureWindow implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("battery/temperature-window", Level.ERROR)
            .title("the coldest day against charging")
            .why("Lithium charged below freezing plates metal inside its cells and is a fire waiting; a stream goes on"
                    + " charging all night long. Flat lead freezes and bursts.")
            .formula(
                    "lowest temperature of the battery's room ≥ lowest charging temperature; or heated, or a management that"
                            + " opens on cold")
            .judged("coldest day")
            .source("no charging of lithium below 0 °C: makers' data; lead −10 °C: common practice")
            .message("warm-enough")
            .message("heated")
            .message("management")
            .message("too-cold")
            .message("heat")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        BatteryBank battery = j.design().battery();
        Spot spot = j.at("/battery/lowest-temperature").during("coldest-day");
        if (Boolean.TRUE.equals(battery.heated())) {
            return List.of(spot.pass("heated"));
        }
        if (battery.lowestTemperature() == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        double least = CellChemistryCatalogue.usual(battery.chemistry(), CellProperty.LOWEST_CHARGE_TEMPERATURE);
        Comparison comparison = Comparison.atLeast(Si.of(battery.lowestTemperature()), least, QuantityKind.TEMPERATURE);
        BatteryManagement management = battery.management();
        return List.of(
                !comparison.holds() && management != null && Boolean.TRUE.equals(management.opensOnCold())
                        ? spot.pass("management")
                        : spot.compare(comparison, "warm-enough", "too-cold"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Search.first(this, j, failure, Stream.of(Candidate.of("heat", new Edit("/battery/heated", true))))
                .map(List::of)
                .orElse(List.of());
    }
}
