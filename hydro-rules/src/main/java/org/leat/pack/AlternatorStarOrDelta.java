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
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Connection;
import org.leat.design.Winding;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.quantity.QuantityKind;

/** Whether the other connection of the winding gives more power. */
final class AlternatorStarOrDelta implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("alternator/star-or-delta", Level.NOTE)
            .title("whether the other connection of the winding gives more power")
            .why("Star and delta are two alternators for the price of one: delta turns 1.73 times as fast at the same"
                    + " voltage. Which suits the wheel on this bus is computed, not guessed.")
            .formula("battery power joined otherwise − battery power as joined, as a share of the latter ≤ limit")
            .judged("running on the nozzles open as built")
            .source("equivalent star of a delta winding: voltage 1/√3, resistance and inductance 1/3 (circuit theory)")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("worth-it", QuantityKind.RATIO, 3, "%", RuleCard.COMMON_PRACTICE)
            .message("as-good", "power", "other")
            .message("better", "power", "other")
            .message("rejoin", "connection")
            .message("fixed")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Winding winding = j.design().alternator().winding();
        Running running = j.cases().running().get(0);
        Spot spot = j.at("/alternator/winding/connection").during(running.id());
        if (Boolean.FALSE.equals(winding.rewirable())) {
            return List.of(spot.notApplicable("fixed"));
        }
        if (winding.connection() == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        AlternatorNumbers alternator = j.plant().numbers().alternator();
        double power = running.operatingPoint().batteryPower();
        double other = j.plant()
                .withAlternator(
                        winding.connection() == Connection.STAR
                                ? alternator.fromStarToDelta()
                                : alternator.fromDeltaToStar())
                .running(running.nozzles())
                .operatingPoint()
                .batteryPower();
        return List.of(spot.compare(
                Comparison.atMost((other - power) / Math.max(power, 1), j.limit("worth-it")),
                "as-good",
                "better",
                Arg.of("power", power, QuantityKind.POWER),
                Arg.of("other", other, QuantityKind.POWER)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        boolean star = j.design().alternator().winding().connection() == Connection.STAR;
        return Search.first(
                        this,
                        j,
                        failure,
                        Stream.of(new Candidate(
                                "rejoin",
                                star ? Rewinding.toDelta(j.design()) : Rewinding.toStar(j.design()),
                                List.of(Arg.of("connection", star ? Connection.DELTA : Connection.STAR)))))
                .map(List::of)
                .orElse(List.of());
    }
}
