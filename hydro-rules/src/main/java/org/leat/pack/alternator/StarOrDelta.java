package org.leat.pack.alternator;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.design.Connection.DELTA;
import static org.leat.design.Connection.STAR;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Winding;
import org.leat.pack.kit.Rewinding;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.AlternatorNumbers;

/** Whether the other connection of the winding gives more power. */
final class StarOrDelta {

    static final Rule RULE = Rule.of(
                    "alternator/star-or-delta", NOTE, "whether the other connection of the winding gives more power")
            .why("Star and delta are two alternators for the price of one: delta turns 1.73 times as fast at the same"
                    + " voltage. Which suits the wheel on this bus is computed, not guessed.")
            .formula("battery power joined otherwise − battery power as joined, as a share of the latter ≤ limit")
            .judged("running on the nozzles open as built")
            .source("equivalent star of a delta winding: voltage 1/√3, resistance and inductance 1/3 (circuit theory)")
            .source(COMMON_PRACTICE)
            .limit("worth-it", RATIO, 3, "%", COMMON_PRACTICE)
            .passes("as-good", "As joined the winding brings {power}, joined otherwise {other}.")
            .fails("better", "As joined the winding brings {power}, joined otherwise {other}: {value} more.")
            .notApplicable("fixed", "Not judged: the joints of the winding cannot be reached.")
            .judge(StarOrDelta::judge)
            .wayOut(
                    "rejoin",
                    "Join the winding in {connection}. In delta a hub motor drives a circulating current round its own phases:"
                            + " measure the idle losses again before and after.",
                    StarOrDelta::rejoined)
            .build();

    private StarOrDelta() {}

    private static Outcome judge(Judgement j) {
        Running running = j.solved().running().get(0);
        Winding winding = j.design().alternator().winding();
        Spot spot = j.at("/alternator/winding/connection").during(running);
        if (Boolean.FALSE.equals(winding.rewirable())) {
            return spot.says("fixed");
        }
        AlternatorNumbers alternator = j.numbers().alternator();
        AlternatorNumbers otherwise =
                spot.given(winding.connection()) == STAR ? alternator.fromStarToDelta() : alternator.fromDeltaToStar();
        double power = running.operatingPoint().batteryPower();
        double other = j.plant()
                .withAlternator(otherwise)
                .running(running.nozzles())
                .operatingPoint()
                .batteryPower();
        return spot.with("power", power, POWER)
                .with("other", other, POWER)
                .atMost((other - power) / Math.max(power, 1), j.limit("worth-it"));
    }

    private static Stream<Change> rejoined(Judgement j, Outcome.Fail failure) {
        boolean star = j.design().alternator().winding().connection() == STAR;
        return Stream.of(Change.of(star ? Rewinding.toDelta(j.design()) : Rewinding.toStar(j.design()))
                .with(Arg.of("connection", star ? DELTA : STAR)));
    }
}
