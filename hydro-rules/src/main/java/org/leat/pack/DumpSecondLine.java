package org.leat.pack;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Safeguards;

/** An independent second means against overvoltage. */
final class DumpSecondLine implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("dump/second-line", Level.WARNING)
            .canFailAs(Level.ERROR)
            .title("an independent second means against overvoltage")
            .why(
                    "One relay, one element, one setting stand between a full battery and the whole stream. Everything that"
                            + " guards alone fails alone; with lithium the failure is a fire.")
            .formula("a second means stated; an error where the battery is of lithium")
            .judged("as built")
            .source(
                    "US NEC 690.72(B): a second, independent means against overcharge with diverted charge (from memory)")
            .message("stated")
            .message("alone")
            .message("fit")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Safeguards safeguards = j.design().safeguards();
        Boolean second = safeguards == null ? null : safeguards.secondOvervoltageGuard();
        Spot spot = j.at("/safeguards/second-overvoltage-guard");
        return List.of(
                Boolean.FALSE.equals(second) && !Lead.is(j)
                        ? spot.fail(Level.ERROR, "alone")
                        : Stated.so(spot, second, "stated", "alone"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Stated.otherwise(this, j, failure, "fit", true);
    }
}
