package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Place;
import org.leat.electrics.ShortCircuitTorque;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Whether the alternator can blow the device meant to clear its faults. */
final class ProtectionAlternatorCannotTrip implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("protection/alternator-cannot-trip", Level.NOTE)
            .title("whether the alternator can blow the device on its side")
            .why(
                    "A permanent-magnet alternator limits its own current: shorted, it gives little more than at work. A fuse"
                            + " on its side looks like protection and never opens.")
            .formula("short-circuit current of the alternator, behind the bridge 3√2/π of it ≥ factor · I_n")
            .judged("leads shorted at the running speed, the nozzle set that turns fastest")
            .source(
                    "I = E/(√2 Z): circuit equations of the sine machine; six-pulse bridge: Mohan, Power Electronics, ch. 5")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("factor", QuantityKind.RATIO, 3, "", RuleCard.COMMON_PRACTICE)
            .message("trips", "device", "current")
            .message("does-not-trip", "device", "current")
            .message("none")
            .message("do-not-count")
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
        Running fastest =
                Worst.most(j.cases().running(), r -> r.operatingPoint().alternatorSpeed());
        double leads = ShortCircuitTorque.current(
                Brake.machine(j, fastest), fastest.operatingPoint().alternatorSpeed());
        List<Outcome> outcomes = new ArrayList<>();
        for (Devices.Placed device : Devices.all(j.design())) {
            if (device.opens() && !device.joins(Place.BATTERY)) {
                boolean before = device.joins(Place.ALTERNATOR);
                if (before || device.joins(Place.RECTIFIER)) {
                    double current = before ? leads : 3 * Math.sqrt(2) / Math.PI * leads;
                    outcomes.add(j.at(device.path() + "/rated-current")
                            .during(fastest.id())
                            .compare(
                                    Comparison.atLeast(
                                            current / Si.of(device.device().ratedCurrent()), j.limit("factor")),
                                    "trips",
                                    "does-not-trip",
                                    device.name(),
                                    Arg.of("current", current, QuantityKind.CURRENT)));
                }
            }
        }
        return outcomes.isEmpty() ? List.of(j.at("/protection").notApplicable("none")) : outcomes;
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return List.of(j.advice("do-not-count"));
    }
}
