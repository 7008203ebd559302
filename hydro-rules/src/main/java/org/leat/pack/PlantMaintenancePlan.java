package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
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

/** When to clean, look at and renew what wears. */
final class PlantMaintenancePlan implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("plant/maintenance-plan", Level.NOTE)
            .title("when to clean, look at and renew what wears")
            .why(
                    "What must be looked at more often than somebody goes there is not looked at. Shut the water, hold the wheel"
                            + " and part the battery before you touch anything; work on it as the local codes ask.")
            .formula(
                    "screen: time between cleanings stretched until it loses too much or is half blocked; nozzles: running"
                            + " time times allowed over found growth; necks of a printed wheel, bearings and battery: as their own"
                            + " rules; the shortest of screen, nozzles and necks ≥ limit")
            .judged("running all the year; bearings on the set that wears most, battery in the season that gives least")
            .source("bearings: ISO 281:2007, 5.3; yearly look at joints, bolts, earths and leads: common practice")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("visit", QuantityKind.TIME, 7, "d", RuleCard.COMMON_PRACTICE)
            .limit("screen-loss", QuantityKind.RATIO, 2, "%", RuleCard.COMMON_PRACTICE)
            .limit("screen-blocked", QuantityKind.RATIO, 50, "%", RuleCard.COMMON_PRACTICE)
            .limit("nozzle-area", QuantityKind.RATIO, 10, "%", RuleCard.COMMON_PRACTICE)
            .message("plan", "screen", "nozzles", "necks", "bearings", "battery")
            .message("so-far", "screen", "nozzles", "necks", "bearings", "battery")
            .message("too-often", "screen", "nozzles", "necks", "bearings", "battery", "part")
            .message("larger-screen", "times")
            .message("harder-nozzle")
            .message("stronger", "material")
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
        List<Interval> all = all(j);
        Interval shortest = shortest(all);
        List<Arg> args = new ArrayList<>(all.stream().map(Interval::arg).toList());
        Comparison comparison = Comparison.atLeast(shortest.time(), j.limit("visit"));
        Spot plan = j.at("/");
        List<Outcome> outcomes = new ArrayList<>();
        if (comparison.holds() && !all.stream().allMatch(Interval::known)) {
            outcomes.add(plan.told("so-far", args.toArray(Arg[]::new)));
        } else {
            args.add(Arg.phrase("part", "part." + shortest.part()));
            outcomes.add(plan.compare(comparison, "plan", "too-often", args.toArray(Arg[]::new)));
        }
        all.forEach(i -> {
            if (i.missing() != null) {
                outcomes.add(j.at(i.path()).notGiven(i.missing()));
            }
        });
        return outcomes;
    }

    private static List<Interval> all(Judgement j) {
        return List.of(
                Interval.screen(
                        j,
                        j.limit("screen-loss").value(),
                        j.limit("screen-blocked").value()),
                Interval.nozzles(j, j.limit("nozzle-area").value()),
                Interval.necks(j),
                Interval.bearings(j),
                Interval.battery(j));
    }

    /** What somebody must go there for; bearings and battery have rules of their own. */
    private static Interval shortest(List<Interval> all) {
        return Worst.least(all.subList(0, 3), Interval::time);
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Interval shortest = shortest(all(j));
        return switch (shortest.part()) {
            case "screen" ->
                List.of(j.advice(
                        "larger-screen",
                        Arg.of("times", j.limit("visit").value() / shortest.time(), QuantityKind.RATIO)));
            case "nozzles" -> List.of(j.advice("harder-nozzle"));
            default -> StrongerBuckets.material(this, j, failure).stream().toList();
        };
    }
}
