package org.leat.pack;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Screen;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;

/** Head lost at the screen when it is due for cleaning. */
final class IntakeScreenLoss implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("intake/screen-loss", Level.WARNING)
            .title("head lost at the screen")
            .why(
                    "What a half-blocked screen takes is lost to the jet, and it pulls the pipe's top below the atmosphere."
                            + " A screen costs little; its area should be generous.")
            .formula("h = k Q², with the openings less their blocked share; share of the gross head")
            .judged("running on the nozzle set with most flow, the screen blocked as stated between cleanings")
            .source(RuleCard.COMMON_PRACTICE)
            .source(
                    "holes and mesh: Idelchik, Handbook of Hydraulic Resistance, section 8 (from memory); bars: Kirschmer 1926")
            .limit("share", QuantityKind.RATIO, 2, "%", RuleCard.COMMON_PRACTICE)
            .message("small", "loss")
            .message("large", "loss")
            .message("more-holes", "holes")
            .message("more-area", "area")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Screen screen = Screens.of(j);
        if (screen == null) {
            return List.of(j.at("/intake").notGiven(Screens.PATH));
        }
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        if (Screens.blockedShare(screen) == null) {
            return List.of(j.at(Screens.PATH).notGiven(Screens.PATH + "/blocked-share"));
        }
        Running running = Worst.most(j.cases().running(), r -> r.water().screenLoss());
        double loss = running.water().screenLoss();
        return List.of(j.at(Screens.PATH)
                .during(running)
                .compare(
                        Comparison.atMost(loss / running.water().grossHead(), j.limit("share")),
                        "small",
                        "large",
                        Arg.of("loss", loss, QuantityKind.LENGTH)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Screen screen = Screens.of(j);
        Comparison comparison = failure.comparison();
        if (screen == null || comparison == null) {
            return List.of();
        }
        double times = Math.sqrt(comparison.value() / comparison.high());
        return Search.first(
                        this, j, failure, Stream.of(1.0, 1.1, 1.3).map(more -> Screens.larger(screen, times * more)))
                .stream()
                .toList();
    }
}
