package org.leat.pack.regulator;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.CURRENT;

import javax.measure.quantity.ElectricCurrent;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.ChargeRegulator;
import org.leat.design.RegulatorKind;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.Regulators;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.OperatingPoint;

/** Current through the charge regulator against its rating. */
final class RegulatorCurrent {

    static final Rule RULE = Rule.of(
                    "regulator/current", ERROR, "current through the charge regulator against its rating")
            .why(
                    "A regulator sized for a solar panel is loaded to its rating at noon; on a stream it is loaded to its rating"
                            + " for ever, in the heat of its own losses.")
            .formula("direct current of the turbine; for a tracking regulator its output ≤ continuous rating")
            .judged("running and battery full, the nozzle set with most current")
            .source(COMMON_PRACTICE)
            .passes("carried", "The regulator carries {value}.")
            .fails("overloaded", "The regulator carries {value}; it is made for {limit}.")
            .notApplicable("none", Regulators.NONE)
            .judge(RegulatorCurrent::judge)
            .leastWayOut(
                    "larger",
                    "A regulator for {rating}.",
                    FieldChanges.raised("A", ElectricCurrent.class, 10, 15, 20, 30, 40, 50, 60, 80, 100, 150, 200))
            .wayOut("smaller-nozzle", NozzlesOnHand.NONE_LARGER, NozzlesOnHand::smaller)
            .build();

    private RegulatorCurrent() {}

    private static Outcome judge(Judgement j) {
        Cases cases = j.solved();
        Spot spot = j.at("/regulator/current-rating");
        ChargeRegulator regulator = j.design().regulator();
        if (regulator == null || regulator.kind() == RegulatorKind.NONE) {
            return spot.says("none");
        }
        if (regulator.kind() == RegulatorKind.TRACKING) {
            Running most = Worst.running(j, OperatingPoint::batteryCurrent);
            return spot.during(most).atMost(most.operatingPoint().batteryCurrent(), regulator.currentRating(), CURRENT);
        }
        Running running = Worst.running(j, OperatingPoint::directCurrent);
        BatteryFull full = Worst.most(cases.batteryFull(), BatteryFull::turbineCurrent);
        double current = running.operatingPoint().directCurrent();
        return full.turbineCurrent() > current
                ? spot.during(full).atMost(full.turbineCurrent(), regulator.currentRating(), CURRENT)
                : spot.during(running).atMost(current, regulator.currentRating(), CURRENT);
    }
}
