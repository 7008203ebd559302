package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricCurrent;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Bridge current against its rating. */
final class RectifierCurrent implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("rectifier/current", Level.ERROR)
            .title("bridge current against its rating")
            .why(
                    "A bridge run above its average current overheats, and a shorted diode brakes the wheel with one phase until something burns.")
            .formula("I_dc at the solved operating point ≤ average current of the bridge")
            .judged("running, the nozzle set with most current")
            .source("mean of one diode I_dc/3 in a three-phase bridge: Rashid, Power Electronics, ch. 3")
            .message("carried")
            .message("overloaded")
            .message("larger", "rating")
            .message("smaller-nozzle", "bore")
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
        Running worst = Worst.most(
                j.cases().running(), running -> running.operatingPoint().directCurrent());
        Spot spot = j.at("/rectifier/average-current").during(worst.id());
        Amount stated = j.plant().numbers().rectifier().averageCurrentRating();
        if (!(stated instanceof Amount.Known limited)) {
            return List.of(Open.because(spot, stated));
        }
        double rating = limited.value();
        return List.of(spot.compare(
                Comparison.atMost(worst.operatingPoint().directCurrent(), rating, QuantityKind.CURRENT),
                "carried",
                "overloaded"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        Search.least(
                        this,
                        j,
                        failure,
                        Stream.of(10, 15, 25, 35, 50, 75, 100, 150, 200, 300)
                                .map(amperes -> Candidate.of(
                                        "larger",
                                        new Edit(
                                                "/rectifier/average-current",
                                                Si.quantity(amperes, "A", ElectricCurrent.class)),
                                        Arg.of("rating", amperes, QuantityKind.CURRENT))))
                .ifPresent(ways::add);
        Search.least(this, j, failure, NozzlesOnHand.smaller(j, "smaller-nozzle"))
                .ifPresent(ways::add);
        return ways;
    }
}
