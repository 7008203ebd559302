package org.leat.pack.intake;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.Comparator;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.Screens;

/** The largest grain that passes the screen against the smallest nozzle it must pass. */
final class OpeningAgainstNozzle {

    static final Rule RULE = Rule.of(
                    "intake/opening-against-nozzle", ERROR, "screen opening against the smallest nozzle")
            .hurtsNobody()
            .why("What passes the screen must pass the nozzle. A pebble that sticks in it stops the jet at once: the"
                    + " water hammers, and the plant stands. Grains bridge across a hole twice to three times their size:"
                    + " from half the bore on this fails as an error, from a third as a warning.")
            .formula("largest opening of the screen / smallest bore")
            .judged("the smallest nozzle of all sets on hand")
            .source(COMMON_PRACTICE)
            .limit("share", RATIO, 0.3334, "", COMMON_PRACTICE)
            .limit("sure-to-plug", RATIO, 0.5, "", COMMON_PRACTICE)
            .passes("fine-enough", "What passes the screen, {opening:mm}, passes the smallest nozzle of {bore:mm}.")
            .fails(
                    "too-coarse",
                    "What passes the screen, {opening:mm}, is {value} of the smallest nozzle of {bore:mm}:"
                            + " it can stick there. Good is {limit}.")
            .judge(OpeningAgainstNozzle::judge)
            .wayOut(
                    "finer",
                    "A screen with openings of {opening:mm} and no less open area.",
                    OpeningAgainstNozzle::finer)
            .build();

    private OpeningAgainstNozzle() {}

    private static Outcome judge(Judgement j) {
        double opening = Screens.opening(Screens.given(j));
        double bore = smallest(j);
        double share = opening / bore;
        return j.at(Screens.PATH)
                .as(share > j.limit("sure-to-plug").value() ? ERROR : WARNING)
                .with("opening", opening, LENGTH)
                .with("bore", bore, LENGTH)
                .atMost(share, j.limit("share"));
    }

    private static double smallest(Judgement j) {
        return j.numbers().nozzles().sets().stream()
                .flatMap(set -> set.bores().stream())
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static Stream<Change> finer(Judgement j, Outcome.Fail failure) {
        return Stream.of(
                Screens.finer(Screens.given(j), smallest(j) * j.limit("share").value()));
    }
}
