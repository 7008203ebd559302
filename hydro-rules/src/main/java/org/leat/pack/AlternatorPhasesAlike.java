package org.leat.pack;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Winding;
import org.leat.quantity.QuantityKind;

/** Whether the three phases are alike. */
final class AlternatorPhasesAlike implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("alternator/phases-alike", Level.WARNING)
            .title("whether the three phases are alike")
            .why(
                    "Phases that differ point to a shorted turn, a bad joint or a rotor out of centre. The weak phase carries"
                            + " less, the others overheat, and the machine hums.")
            .formula("largest difference of the three open-circuit voltages, and of the three resistances ≤ limit")
            .judged("as measured on the bench")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("voltages", QuantityKind.RATIO, 2, "%", RuleCard.COMMON_PRACTICE)
            .limit("resistances", QuantityKind.RATIO, 3, "%", RuleCard.COMMON_PRACTICE)
            .message("voltages-alike")
            .message("voltages-differ")
            .message("resistances-alike")
            .message("resistances-differ")
            .message("look")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Winding winding = j.design().alternator().winding();
        return List.of(
                spread(j, "spread-of-voltages", "voltages", Rated.si(winding.spreadOfVoltages())),
                spread(j, "spread-of-resistances", "resistances", Rated.si(winding.spreadOfResistances())));
    }

    private static Outcome spread(Judgement j, String field, String limit, @Nullable Double spread) {
        Spot spot = j.at("/alternator/winding/" + field);
        return spread == null
                ? spot.notGiven(spot.path())
                : spot.compare(Comparison.atMost(spread, j.limit(limit)), limit + "-alike", limit + "-differ");
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return List.of(j.advice("look"));
    }
}
