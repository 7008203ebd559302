package org.leat.pack.protection;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.CURRENT;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.Place;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.LeadsShorted;
import org.leat.plant.cases.Running;

/** Whether the alternator can blow the device on its side. */
final class AlternatorCannotTrip {

    static final Rule RULE = Rule.of(
                    "protection/alternator-cannot-trip", NOTE, "whether the alternator can blow the device on its side")
            .why(
                    "A permanent-magnet alternator limits its own current: shorted, it gives little more than at work. A fuse"
                            + " on its side looks like protection and never opens.")
            .formula("short-circuit current of the alternator, behind the bridge 3√2/π of it ≥ factor · I_n")
            .judged("leads shorted at the running speed, the nozzle set that turns fastest")
            .source(
                    "I = E/(√2 Z): circuit equations of the sine machine; six-pulse bridge: Mohan, Power Electronics, ch. 5")
            .source(COMMON_PRACTICE)
            .limit("factor", RATIO, 3, "", COMMON_PRACTICE)
            .passes("trips", "Shorted, the alternator gives {current}, {value} times the rating of {device}.")
            .fails(
                    "does-not-trip",
                    "Shorted, the alternator gives no more than {current}, {value} times the rating of {device}: it does not"
                            + " open.")
            .notApplicable("none", "Not judged: no fuse or breaker on the alternator's side.")
            .judgeAll(AlternatorCannotTrip::judge)
            .advice(
                    "do-not-count",
                    "Do not count on it: the winding and its leads must carry that current for as long as water runs, or the"
                            + " water be stopped.")
            .build();

    private AlternatorCannotTrip() {}

    private static List<Outcome> judge(Judgement j) {
        List<Running> running = j.solved().running();
        Running fastest = Worst.most(running, r -> r.operatingPoint().alternatorSpeed());
        LeadsShorted shorted = j.solved().leadsShorted().get(running.indexOf(fastest));
        return Devices.each(j, AlternatorCannotTrip::onItsSide, "none", device -> {
            double current = device.joins(Place.ALTERNATOR) ? shorted.leadCurrent() : shorted.directCurrent();
            return j.at(device.ratingPath())
                    .during(fastest)
                    .with(device.name())
                    .with("current", current, CURRENT)
                    .atLeast(current / device.rating(), j.limit("factor"));
        });
    }

    private static boolean onItsSide(Devices.Placed device) {
        return device.opens()
                && !device.joins(Place.BATTERY)
                && (device.joins(Place.ALTERNATOR) || device.joins(Place.RECTIFIER));
    }
}
