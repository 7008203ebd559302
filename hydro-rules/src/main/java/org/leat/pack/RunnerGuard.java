package org.leat.pack;

import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Safeguards;
import org.leat.plant.cases.LoadLost;
import org.leat.quantity.QuantityKind;

/** A fixed guard over what turns. */
final class RunnerGuard implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("runner/guard", Level.ERROR)
            .title("guard over rotating parts")
            .why(
                    "A shaft that turns at a thousand revolutions takes a sleeve and the arm in it. At runaway it turns twice as"
                            + " fast and throws what breaks.")
            .formula("fixed guard over wheel, shaft and coupling")
            .judged("the machine as built")
            .source("ISO 14120: guards (from memory); local rules for machinery")
            .message("guarded")
            .message("unguarded", "speed")
            .message("look", "speed")
            .message("fit")
            .build();

    private static final String PATH = "/safeguards/runner-guard";

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().loadLost().isEmpty()) {
            return Open.unsolved(j);
        }
        Safeguards safeguards = j.design().safeguards();
        double fastest = Worst.most(j.cases().loadLost(), LoadLost::speed).speed();
        Arg speed = Arg.of("speed", fastest, QuantityKind.ROTATIONAL_SPEED);
        if (safeguards == null || safeguards.runnerGuard() == null) {
            return List.of(j.at("/safeguards").review("look", speed));
        }
        return List.of(
                safeguards.runnerGuard()
                        ? j.at(PATH).pass("guarded")
                        : j.at(PATH).fail("unguarded", speed));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return List.of(j.wayOut("fit", List.of(new Edit(PATH, true))));
    }
}
