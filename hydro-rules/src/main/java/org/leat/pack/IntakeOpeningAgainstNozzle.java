package org.leat.pack;

import java.util.Comparator;
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
import org.leat.quantity.QuantityKind;

/** The largest grain that passes the screen against the smallest nozzle it must pass. */
final class IntakeOpeningAgainstNozzle implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("intake/opening-against-nozzle", Level.ERROR)
            .hurtsNobody()
            .title("screen opening against the smallest nozzle")
            .why("What passes the screen must pass the nozzle. A pebble that sticks in it stops the jet at once: the"
                    + " water hammers, and the plant stands. Grains bridge across a hole twice to three times their size:"
                    + " from half the bore on this fails as an error, from a third as a warning.")
            .formula("largest opening of the screen / smallest bore")
            .judged("the smallest nozzle of all sets on hand")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("share", QuantityKind.RATIO, 0.3334, "", RuleCard.COMMON_PRACTICE)
            .limit("sure-to-plug", QuantityKind.RATIO, 0.5, "", RuleCard.COMMON_PRACTICE)
            .message("fine-enough", "opening", "bore")
            .message("too-coarse", "opening", "bore")
            .message("finer", "opening")
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
        double opening = Screens.opening(screen);
        double bore = smallest(j);
        double share = opening / bore;
        Level level = share > j.limit("sure-to-plug").value() ? Level.ERROR : Level.WARNING;
        return List.of(j.at(Screens.PATH)
                .compare(
                        level,
                        Comparison.atMost(share, j.limit("share")),
                        "fine-enough",
                        "too-coarse",
                        Arg.of("opening", opening, QuantityKind.LENGTH),
                        Arg.of("bore", bore, QuantityKind.LENGTH)));
    }

    private static double smallest(Judgement j) {
        return j.plant().numbers().nozzles().sets().stream()
                .flatMap(set -> set.bores().stream())
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Screen screen = Screens.of(j);
        if (screen == null) {
            return List.of();
        }
        double opening = smallest(j) * j.limit("share").value();
        return Search.first(this, j, failure, Stream.of(Screens.finer(screen, opening))).stream()
                .toList();
    }
}
