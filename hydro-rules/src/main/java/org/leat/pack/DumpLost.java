package org.leat.pack;

import java.util.List;
import java.util.Objects;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.BatteryManagement;
import org.leat.design.Safeguards;
import org.leat.plant.LoadLost;
import org.leat.quantity.QuantityKind;

/** The dump load fails open while the battery is full. */
final class DumpLost implements Rule {

    private static final RuleCard CARD = RuleCard.of("dump/lost", Level.ERROR)
            .title("the dump load fails open while the battery is full")
            .why(
                    "Elements burn through, relays stick, terminals come loose. Then all the turbine gives goes into a full battery,"
                            + " and when that or its management opens, the bus follows the runaway.")
            .formula(
                    "an independent second means against overvoltage; or settled runaway voltage ≤ least rating on the bus,"
                            + " with a battery that opens by itself")
            .judged("battery full, then load lost, the nozzle set that runs fastest")
            .source(
                    "US NEC 690.72(B): a second, independent means against overcharge with diverted charge (from memory)")
            .message("second-line")
            .message("stands-it", "part")
            .message("breaks-it", "part")
            .message("overcharged")
            .message("none")
            .message("fit")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Outcome> without = Dumped.without(j, "none");
        if (without != null) {
            return without;
        }
        Safeguards safeguards = j.design().safeguards();
        Boolean second = safeguards == null ? null : safeguards.secondOvervoltageGuard();
        LoadLost worst = Worst.most(j.cases().loadLost(), LoadLost::directVoltage);
        Spot spot = j.at("/safeguards/second-overvoltage-guard").during(worst.id());
        if (second == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        if (second) {
            return List.of(spot.pass("second-line"));
        }
        BatteryManagement management = j.design().battery().management();
        if (Lead.is(j) || management == null) {
            return List.of(spot.fail("overcharged"));
        }
        BusPart weakest = null;
        for (BusPart part : BusPart.all(j.design())) {
            if (part.rating() == null) {
                return List.of(spot.notGiven(part.path()));
            }
            if (weakest == null || part.rating() < Objects.requireNonNull(weakest.rating())) {
                weakest = part;
            }
        }
        return List.of(
                weakest == null
                        ? spot.fail("overcharged")
                        : Rated.atMost(
                                spot,
                                worst.directVoltage(),
                                weakest.rating(),
                                QuantityKind.VOLTAGE,
                                "stands-it",
                                "breaks-it",
                                Arg.phrase("part", weakest.word())));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Stated.otherwise(this, j, failure, "fit", true);
    }
}
