package org.leat.pack.dump;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.CURRENT;
import static org.leat.quantity.QuantityKind.TIME;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.DumpLoad;
import org.leat.design.DumpSide;
import org.leat.pack.kit.LeadAcid;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.BatteryNumbers;

/** The dump load does not switch off. */
final class StuckOn {

    static final Rule RULE = Rule.of("dump/stuck-on", WARNING, "the dump load does not switch off")
            .why(
                    "A contact that has welded, a transistor that has failed short: the dump load takes all the turbine gives and the"
                            + " battery's charge on top, by night and unseen, and lead left empty is spoilt within days.")
            .formula(
                    "charge of the battery / (current of the cold elements at its resting voltage - least current of the turbine) ≥"
                            + " time until somebody looks; or the battery's management opens; or the dump load hangs before a tracking"
                            + " or series regulator, which lets nothing back")
            .judged("running, the nozzle set that gives least, the dump load on")
            .source(COMMON_PRACTICE)
            .limit("least", TIME, 24, "h", COMMON_PRACTICE)
            .passes("fed-by-turbine", "Stuck on, the dump load takes {current}: no more than the turbine gives.")
            .passes(
                    "no-way-back",
                    "Stuck on, the dump load takes what the turbine gives, but nothing from the battery: the regulator stands between.")
            .passes(
                    "management-opens",
                    "Stuck on, the dump load takes {drain} out of the battery, whose management opens when it is empty.")
            .passes(
                    "seen-in-time",
                    "Stuck on, the dump load takes {drain} out of the battery, which is empty after {value}.")
            .fails(
                    "drains",
                    "Stuck on, the dump load takes {drain} out of the battery, which is empty after {value}; it should last {limit}.")
            .notApplicable("none", DumpLoads.NONE)
            .judge(DumpLoads.judge(StuckOn::judge))
            .advice(
                    "disconnect",
                    "A low-voltage disconnect relay in the dump load's branch, or a lamp or alarm that shows that it is on.")
            .build();

    private StuckOn() {}

    private static Outcome judge(Judgement j, DumpLoad dump) {
        Running least = Worst.least(
                j.solved().running(), running -> running.operatingPoint().batteryCurrent());
        Spot spot = j.at("/dump-load").during(least);
        if (j.numbers().regulator().divides() && spot.given("/dump-load/side", dump.side()) == DumpSide.BRIDGE) {
            return spot.says("no-way-back");
        }
        BatteryNumbers battery = j.numbers().battery();
        double current = DumpLoads.numbers(j).currentCold(battery.restingVoltage());
        double drain = current - least.operatingPoint().batteryCurrent();
        Spot told = spot.with("current", current, CURRENT).with("drain", drain, CURRENT);
        if (drain <= 0) {
            return told.says("fed-by-turbine");
        }
        if (!LeadAcid.is(j)) {
            spot.given("/battery/management", j.design().battery().management());
            return told.says("management-opens");
        }
        double seconds = battery.capacity() * battery.stateOfCharge() / drain;
        return told.saying("seen-in-time", "drains").atLeast(seconds, j.limit("least"));
    }
}
