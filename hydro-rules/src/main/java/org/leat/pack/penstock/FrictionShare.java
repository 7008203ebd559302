package org.leat.pack.penstock;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.NOTE;
import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.PipeSizes;
import org.leat.plant.solved.WaterSide;

/** How much of the fall the pipe eats. */
final class FrictionShare {

    private static final String PAST_MAXIMUM = "past-maximum";

    /** Of the power: what is less nobody misses. */
    private static final double MISSED = 0.02;

    static final Rule RULE = Rule.of("penstock/friction-share", WARNING, "share of the gross head lost on the way")
            .canFailAs(ERROR)
            .hurtsNobody()
            .why("A narrow pipe wastes the fall; a wide one wastes money. From a third of the head on, a larger nozzle"
                    + " brings more water but no more power.")
            .formula("share = 1 − net head / gross head; jet power is greatest at 1/3 where the loss goes with Q²")
            .judged("running on the nozzle set open as built, pipe full")
            .source(COMMON_PRACTICE)
            .source("power maximum at one third: d(Q (H − k Q²))/dQ = 0")
            .limit("least", RATIO, 5, "%", COMMON_PRACTICE)
            .limit("most", RATIO, 15, "%", COMMON_PRACTICE)
            .limit(PAST_MAXIMUM, RATIO, 33.3, "%", "d(Q (H − k Q²))/dQ = 0")
            .passes("in-range", "The pipe takes {head} of the fall, {value}.")
            .fails("narrow", "The pipe takes {head} of the fall, {value}; good practice is {limit}.")
            .fails(
                    "past-maximum",
                    "The pipe takes {head} of the fall, {value}. Past a third more water brings less power.")
            .fails(
                    "wide",
                    "The pipe takes only {head} of the fall, {value}: more pipe than it takes to bring the power.")
            .notApplicable("not-full", "Not judged: the pipe does not stay full.")
            .judge(FrictionShare::judge)
            .wayOut("other-pipe", PipeSizes.OTHER, FrictionShare::otherPipe)
            .wayOut("other-nozzle", "Nozzles of {bore:mm} in every open position.", FrictionShare::otherNozzle)
            .build();

    private FrictionShare() {}

    private static Outcome judge(Judgement j) {
        WaterSide water = j.solved().running().get(0).water();
        Spot spot = j.at("/penstock");
        if (!water.fullPipe()) {
            return spot.says("not-full");
        }
        double share = water.frictionShare();
        if (share >= j.limit(PAST_MAXIMUM).value()) {
            spot = spot.as(ERROR).saying("in-range", PAST_MAXIMUM);
        } else if (share < j.limit("least").value()) {
            spot = spot.as(NOTE).saying("in-range", "wide");
        }
        return spot.with("head", water.grossHead() - water.netHead(), LENGTH)
                .within(share, j.limit("least"), j.limit("most"));
    }

    private static Stream<Change> otherPipe(Judgement j, Outcome.Fail failure) {
        int longest = PipeSizes.longest(j);
        return failure.says("wide")
                ? PipeSizes.smaller(j, longest).map(change -> change.onlyIf(changed -> losesNothing(j, changed)))
                : PipeSizes.larger(j, longest);
    }

    private static Stream<Change> otherNozzle(Judgement j, Outcome.Fail failure) {
        return failure.says("wide") ? NozzlesOnHand.larger(j, failure) : NozzlesOnHand.smaller(j, failure);
    }

    /** A pipe that costs less is no way out where it costs power that anybody would miss. */
    private static boolean losesNothing(Judgement j, Judgement changed) {
        double now = j.solved().running().get(0).operatingPoint().batteryPower();
        return j.gain(changed.plant()).orElse(0) >= -MISSED * now;
    }
}
