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

/** Strings in parallel. */
final class BatteryStrings implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("battery/strings", Level.WARNING)
            .title("strings in parallel")
            .why(
                    "Strings in parallel never share alike: the best one works, the weakest is overcharged and, when a cell shorts, the"
                            + " others discharge into it.")
            .formula("strings in parallel ≤ limit, each with its own fuse")
            .judged("as built")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("most", QuantityKind.RATIO, 4, "", RuleCard.COMMON_PRACTICE)
            .message("few")
            .message("many")
            .message("each-fused")
            .message("not-fused")
            .message("one-string")
            .message("larger-cells", "strings")
            .message("fuse")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Integer strings = j.design().battery().strings();
        Spot spot = j.at("/battery/strings");
        if (strings == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        Outcome count = spot.compare(Comparison.atMost(strings, j.limit("most")), "few", "many");
        Spot fused = j.at("/battery/strings-protected");
        return List.of(
                count,
                strings == 1
                        ? fused.notApplicable("one-string")
                        : Stated.so(fused, j.design().battery().stringsProtected(), "each-fused", "not-fused"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return failure.comparison() == null
                ? Stated.otherwise(this, j, failure, "fuse", true)
                : Stated.otherwise(this, j, failure, "larger-cells", 2, Arg.of("strings", 2));
    }
}
