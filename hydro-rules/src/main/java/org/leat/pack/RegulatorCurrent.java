package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.ElectricCurrent;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.RegulatorKind;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;

/** Current through the charge regulator against its rating. */
final class RegulatorCurrent implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("regulator/current", Level.ERROR)
            .title("current through the charge regulator against its rating")
            .why(
                    "A regulator sized for a solar panel is loaded to its rating at noon; on a stream it is loaded to its rating"
                            + " for ever, in the heat of its own losses.")
            .formula("direct current of the turbine; for a tracking regulator its output ≤ continuous rating")
            .judged("running and battery full, the nozzle set with most current")
            .source(RuleCard.COMMON_PRACTICE)
            .message("carried")
            .message("overloaded")
            .message("none")
            .message("larger", "rating")
            .message("smaller-nozzle", "bore")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Spot spot = j.at("/regulator/current-rating");
        if (j.design().regulator() == null) {
            return List.of(spot.notApplicable("none"));
        }
        RegulatorKind kind = j.design().regulator().kind();
        if (kind == RegulatorKind.NONE) {
            return List.of(spot.notApplicable("none"));
        }
        boolean tracks = kind == RegulatorKind.TRACKING;
        Running running = Worst.most(j.cases().running(), r -> current(r, tracks));
        BatteryFull full = Worst.most(j.cases().batteryFull(), BatteryFull::turbineCurrent);
        boolean fullIsMore = !tracks && full.turbineCurrent() > current(running, false);
        return List.of(Rated.atMost(
                spot.during(fullIsMore ? full.id() : running.id()),
                fullIsMore ? full.turbineCurrent() : current(running, tracks),
                j.plant().numbers().regulator().currentRating(),
                QuantityKind.CURRENT,
                "carried",
                "overloaded"));
    }

    private static double current(Running running, boolean tracks) {
        return tracks
                ? running.operatingPoint().batteryCurrent()
                : running.operatingPoint().directCurrent();
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>(Rated.raised(
                this, j, failure, "larger", "A", ElectricCurrent.class, 10, 15, 20, 30, 40, 50, 60, 80, 100, 150, 200));
        Search.first(this, j, failure, NozzlesOnHand.smaller(j, "smaller-nozzle"))
                .ifPresent(ways::add);
        return ways;
    }
}
