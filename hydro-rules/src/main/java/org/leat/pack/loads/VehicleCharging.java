package org.leat.pack.loads;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.TIME;

import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.LeanSeason;
import org.leat.plant.cases.Running;
import org.leat.plant.duties.PackCharging;
import org.leat.plant.loads.DailyUse;

/** Vehicle and tool packs charged at once. */
final class VehicleCharging {

    static final Rule RULE = Rule.of("loads/vehicle-charging", WARNING, "vehicle and tool packs charged at once")
            .why(
                    "Three chargers plugged in of an evening draw more than a small stream gives; what is missing comes out of the"
                            + " house battery, through its losses.")
            .formula(
                    "power of all chargers at the battery's poles ≤ mean generation less the mean of all other use; else one"
                            + " after the other")
            .judged("all packs at once, at the flow of the year that gives least")
            .source("energy balance; list scheduling: R. L. Graham, SIAM J. Appl. Math. 17 (1969) 416")
            .passes("at-once", "All packs at once draw {value}; {spare} can be spared.")
            .fails("too-much", "All packs at once draw {value}; only {spare} can be spared.")
            .notApplicable("no-packs", "Not judged: no pack is charged.")
            .judge(VehicleCharging::judge)
            .advice(
                    "in-turn",
                    "Charge the {packs} packs in turn: all are full after {time:h}.",
                    VehicleCharging::inTurn)
            .advice(
                    "too-strong",
                    "A weaker charger for {pack}: its own alone draws more than can be spared.",
                    VehicleCharging::tooStrong)
            .build();

    private VehicleCharging() {}

    private static Outcome judge(Judgement j) {
        Spot spot = j.at("/loads");
        DailyUse use = LeanSeason.use(j, spot);
        if (use.packs().isEmpty()) {
            return spot.says("no-packs");
        }
        Running lean = LeanSeason.running(j);
        PackCharging charging = PackCharging.of(lean, use);
        return spot.during(lean)
                .with("spare", charging.spare(), POWER)
                .atMost(charging.together(), charging.spare(), POWER);
    }

    private static PackCharging charging(Judgement j, Outcome.Fail failure) {
        return PackCharging.of(LeanSeason.running(j), LeanSeason.use(j, j.at(failure.path())));
    }

    private static Stream<Change> inTurn(Judgement j, Outcome.Fail failure) {
        PackCharging charging = charging(j, failure);
        return charging.tooStrong().isEmpty()
                ? Stream.of(Change.advice().with("time", charging.time(), TIME).with("packs", charging.inTurn()))
                : Stream.empty();
    }

    private static Stream<Change> tooStrong(Judgement j, Outcome.Fail failure) {
        return charging(j, failure).tooStrong().stream()
                .map(pack -> Change.advice().with("pack", pack));
    }
}
