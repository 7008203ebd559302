package org.leat.pack;

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

/** Years of the battery at its daily use. */
final class BatteryCycleLife implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("battery/cycle-life", Level.NOTE)
            .title("years of the battery at its daily use")
            .why("The battery is what is bought again and again. How deep it goes every day settles how often.")
            .formula(
                    "years = cycles at the day's depth · temperature factor / 365.25; shallower than the table its age decides")
            .judged("every day a day of full use at the flow of the year that gives least")
            .source(
                    "cycles against depth: makers' curves as tabled with the cells' properties; lead halves for 10 K above"
                            + " 25 °C: a battery education text")
            .limit("least-years", QuantityKind.RATIO, 5, "", RuleCard.COMMON_PRACTICE)
            .message("lasts", "depth")
            .message("short", "depth")
            .message("age-decides", "depth")
            .message("larger", "capacity")
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
        Spot spot = j.at("/battery/capacity").during(Lean.of(j).id());
        CycleYears cycled = CycleYears.of(j);
        if (cycled.missing() != null) {
            return List.of(spot.notGiven(cycled.missing()));
        }
        Arg told = Arg.of("depth", cycled.depth(), QuantityKind.RATIO);
        Double years = cycled.years();
        return List.of(
                years == null
                        ? spot.pass("age-decides", told)
                        : spot.compare(Comparison.atLeast(years, j.limit("least-years")), "lasts", "short", told));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Lean.largerBank(this, j, failure);
    }
}
