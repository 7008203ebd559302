package org.leat.pack.intake;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.Screen;
import org.leat.pack.kit.Screens;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;

/** Head lost at the screen when it is due for cleaning. */
final class ScreenLoss {

    static final Rule RULE = Rule.of("intake/screen-loss", WARNING, "head lost at the screen")
            .why(
                    "What a half-blocked screen takes is lost to the jet, and it pulls the pipe's top below the atmosphere."
                            + " A screen costs little; its area should be generous.")
            .formula("h = k Q², with the openings less their blocked share; share of the gross head")
            .judged("running on the nozzle set with most flow, the screen blocked as stated between cleanings")
            .source(COMMON_PRACTICE)
            .source(
                    "holes and mesh: Idelchik, Handbook of Hydraulic Resistance, section 8 (from memory); bars: Kirschmer 1926")
            .limit("share", RATIO, 2, "%", COMMON_PRACTICE)
            .passes("small", "The screen takes {loss} when it is due for cleaning, {value:%} of the fall.")
            .fails(
                    "large",
                    "The screen takes {loss} when it is due for cleaning, {value:%} of the fall; {limit} is"
                            + " enough.")
            .judge(ScreenLoss::judge)
            .wayOut(
                    "more-holes",
                    Screens.MORE_HOLES,
                    (j, failure) -> Screens.moreHoles(j, Math.sqrt(failure.value() / failure.limit())))
            .wayOut(
                    "more-area",
                    Screens.MORE_AREA,
                    (j, failure) -> Screens.moreArea(j, Math.sqrt(failure.value() / failure.limit())))
            .build();

    private ScreenLoss() {}

    private static Outcome judge(Judgement j) {
        Screen screen = Screens.given(j);
        Running running = Worst.most(j.solved().running(), r -> r.water().screenLoss());
        Screens.blocked(j, screen); // the loss counts with it
        double loss = running.water().screenLoss();
        return j.at(Screens.PATH)
                .during(running)
                .with("loss", loss, LENGTH)
                .atMost(loss / running.water().grossHead(), j.limit("share"));
    }
}
