package org.leat.pack.runner;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.ROTATIONAL_SPEED;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.DesignParts;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.LoadLost;

/** A fixed guard over what turns. */
final class Guard {

    static final Rule RULE = Rule.of("runner/guard", ERROR, "guard over rotating parts")
            .why(
                    "A shaft that turns at a thousand revolutions takes a sleeve and the arm in it. At runaway it turns twice as"
                            + " fast and throws what breaks.")
            .formula("fixed guard over wheel, shaft and coupling")
            .judged("the machine as built")
            .source("ISO 14120: guards (from memory); local rules for machinery")
            .passes("guarded", "A guard covers what turns.")
            .fails("unguarded", "Nothing covers the wheel and shaft, which reach {speed:rpm} when the load is lost.")
            .review(
                    "look",
                    "Whether a guard covers wheel and shaft is not told; they reach {speed:rpm} when the load is lost. Look.")
            .judge(Guard::judge)
            .wayOut(
                    "fit",
                    "A fixed guard over wheel, shaft and coupling before the water is let on.",
                    FieldChanges.to(true))
            .build();

    private Guard() {}

    private static Outcome judge(Judgement j) {
        LoadLost fastest = Worst.most(j.solved().loadLost(), LoadLost::speed);
        Spot told = j.at("/safeguards").with("speed", fastest.speed(), ROTATIONAL_SPEED);
        Boolean guard = DesignParts.safeguards(j).runnerGuard();
        if (guard == null) {
            return told.says("look");
        }
        return guard
                ? j.at("/safeguards/runner-guard").says("guarded")
                : told.at("/safeguards/runner-guard").says("unguarded");
    }
}
