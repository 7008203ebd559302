package org.leat.pack.battery;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.CURRENT;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.BankSizes;
import org.leat.pack.kit.LeadAcid;
import org.leat.pack.kit.LeanSeason;
import org.leat.plant.duties.FullDay;
import org.leat.plant.numbers.BatteryNumbers;

/** Surplus that keeps lead from sulphating. */
final class LeastCurrent {

    static final Rule RULE = Rule.of("battery/least-current", WARNING, "surplus that keeps lead from sulphating")
            .why(
                    "A large bank on a small stream never sees the current that drives the sulphate out of its plates. It dies of being"
                            + " too large.")
            .formula("(mean generation − mean use) / bank voltage ≥ C / 50 h")
            .judged("a day of full use at the flow of the year that gives least")
            .source(COMMON_PRACTICE)
            .passes("enough", "In the leanest season {value} are left to charge the battery.")
            .fails(
                    "too-little",
                    "In the leanest season {value} are left to charge the battery; lead of this size wants {limit}"
                            + " or it sulphates.")
            .notApplicable("not-lead", "Not judged: only lead sulphates.")
            .judge(LeastCurrent::judge)
            .wayOut("smaller", BankSizes.BANK, BankSizes::smaller)
            .build();

    private LeastCurrent() {}

    private static Outcome judge(Judgement j) {
        Spot spot = j.at("/battery/capacity");
        if (!LeadAcid.is(j)) {
            return spot.says("not-lead");
        }
        FullDay day = LeanSeason.day(j, spot);
        BatteryNumbers battery = j.numbers().battery();
        return spot.during(day.running())
                .atLeast(day.surplus() / battery.restingVoltage(), battery.leastMeanCurrentForLead(), CURRENT);
    }
}
