package org.leat.pack.plant;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.Quantities.mm;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.leat.check.Change;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;

/** Power to be had with the nozzles on hand. */
final class LeftOnTheTable {

    private static final String OPEN = "/nozzles/open";

    static final Rule RULE = Rule.of("plant/left-on-the-table", NOTE, "power to be had with the nozzles on hand")
            .why("A nozzle in a drawer is the cheapest power there is, as long as the stream has the water.")
            .formula("most battery power of the sets on hand over that of the set as built, less one ≤ limit")
            .judged("running on each nozzle set on hand, with the most water the stream has")
            .source(COMMON_PRACTICE)
            .limit("worth-it", RATIO, 5, "%", COMMON_PRACTICE)
            .passes("best-fitted", "The nozzles fitted bring {power}, about the most of those on hand.")
            .fails("better-on-hand", "The nozzles fitted bring {power}; {nozzles} from the drawer bring {other}.")
            .judge(LeftOnTheTable::judge)
            .wayOut("fit", "Fit {nozzles}.", LeftOnTheTable::best)
            .build();

    private LeftOnTheTable() {}

    private static Outcome judge(Judgement j) {
        List<Running> all = j.solved().running();
        if (all.size() == 1) {
            return j.at(OPEN).notGiven("/nozzles/available");
        }
        Running built = all.get(0);
        double power = Math.max(built.operatingPoint().batteryPower(), 1);
        Running best = best(j);
        double other = best.operatingPoint().batteryPower();
        Spot spot = j.at(OPEN).during(built).with("power", power, POWER);
        Comparison more = Comparison.atMost(other / power - 1, j.limit("worth-it"));
        return more.holds()
                ? spot.compare(more)
                : spot.with("nozzles", best.nozzles().name())
                        .with("other", other, POWER)
                        .compare(more);
    }

    private static Running best(Judgement j) {
        return Worst.most(j.solved().running(), r -> r.operatingPoint().batteryPower());
    }

    private static Stream<Change> best(Judgement j, Outcome.Fail failure) {
        Running best = best(j);
        List<Quantity<Length>> open = best.nozzles().bores().stream()
                .map(bore -> mm(Math.rint(bore * 1e5) / 100))
                .toList();
        return Stream.of(Change.of(OPEN, open).with("nozzles", best.nozzles().name()));
    }
}
