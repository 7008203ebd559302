package org.leat.pack;

import java.util.List;
import java.util.Objects;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.BatteryManagement;
import org.leat.design.Safeguards;
import org.leat.plant.cases.DumpLoadLost;
import org.leat.quantity.QuantityKind;

/** The dump load fails open while the battery is full. */
final class DumpLost implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("dump/lost", Level.ERROR)
            .title("the dump load fails open while the battery is full")
            .why(
                    "Elements burn through, relays stick, terminals come loose. Then all the turbine gives goes into a full battery,"
                            + " and when that or its management opens, the bus follows the runaway.")
            .formula(
                    "an independent second means against overvoltage; or settled runaway voltage ≤ least rating on the bus,"
                            + " with a battery that opens by itself or a regulator that lets go")
            .judged("dump load lost while the battery is full, the nozzle set that runs fastest")
            .source(
                    "US NEC 690.72(B): a second, independent means against overcharge with diverted charge (from memory)")
            .message("second-line")
            .message("stands-it", "part", "event")
            .message("breaks-it", "part", "event")
            .message("overcharged")
            .message("no-part")
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
        Spot nowhere = j.at("/safeguards/second-overvoltage-guard");
        if (j.cases().dumpLost().isEmpty()) {
            return List.of(nowhere.notGiven("/dump-load/resistance"));
        }
        DumpLoadLost worst = Worst.most(j.cases().dumpLost(), DumpLoadLost::lastingVoltage);
        Spot spot = nowhere.during(worst);
        if (second == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        if (second) {
            return List.of(spot.pass("second-line"));
        }
        BatteryManagement management = j.design().battery().management();
        if (worst.overchargesFirst() && (Lead.is(j) || management == null)) {
            return List.of(spot.fail("overcharged"));
        }
        BusPart weakest = null;
        for (BusPart part : worst.overchargesFirst() ? BusPart.all(j.design()) : BusPart.withoutBattery(j.design())) {
            if (part.rating() == null) {
                return List.of(spot.notGiven(part.path()));
            }
            if (weakest == null || part.rating() < Objects.requireNonNull(weakest.rating())) {
                weakest = part;
            }
        }
        return List.of(
                weakest == null
                        ? spot.fail("no-part")
                        : Rated.atMost(
                                spot,
                                worst.lastingVoltage(),
                                weakest.rating(),
                                QuantityKind.VOLTAGE,
                                "stands-it",
                                "breaks-it",
                                Arg.phrase("part", weakest.word()),
                                Arg.phrase(
                                        "event",
                                        worst.overchargesFirst() ? "event.battery-opens" : "event.regulator-lets-go")));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Stated.otherwise(this, j, failure, "fit", true);
    }
}
