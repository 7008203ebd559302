package org.leat.pack;

import java.util.List;
import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.catalogue.CellProperty;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** How long the loads run with the turbine stopped. */
final class BatteryAutonomy implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("battery/autonomy", Level.WARNING)
            .title("how long the loads run with the turbine stopped")
            .why(
                    "Leaves block the screen, ice the intake, a nozzle plugs: the battery is what keeps the lights on until somebody"
                            + " has walked up the stream.")
            .formula("t = D V C / mean power of the loads at the battery's poles ≥ hours wanted")
            .judged("turbine stopped, battery full")
            .source("energy balance")
            .message("long-enough", "mean")
            .message("too-short", "mean")
            .message("larger", "capacity")
            .build();

    private static final double DAY = 86_400;

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Spot spot = j.at("/battery/autonomy-wanted");
        if (j.design().battery().autonomyWanted() == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        DailyUse daily = DailyUse.of(j.design());
        if (daily.missing() != null) {
            return List.of(spot.notGiven(daily.missing()));
        }
        double mean = daily.use().demand() / DAY;
        double depth = CellChemistryCatalogue.usual(j.design().battery().chemistry(), CellProperty.DEPTH_OF_DISCHARGE);
        double time = mean > 0 ? depth * Lean.stored(j) / mean : Double.MAX_VALUE;
        return List.of(spot.compare(
                Comparison.atLeast(time, Si.of(j.design().battery().autonomyWanted()), QuantityKind.TIME),
                "long-enough",
                "too-short",
                Arg.of("mean", mean, QuantityKind.POWER)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Lean.largerBank(this, j, failure);
    }
}
