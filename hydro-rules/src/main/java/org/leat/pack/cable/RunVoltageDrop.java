package org.leat.pack.cable;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Place;
import org.leat.pack.kit.Conductors;
import org.leat.pack.kit.RunCapacity;
import org.leat.pack.kit.Runs;
import org.leat.plant.cases.CableDuty;

/** Voltage lost in each run at its greatest lasting current. */
final class RunVoltageDrop {

    static final Rule RULE = Rule.of("cable/voltage-drop", WARNING, "voltage lost in the cable")
            .why("At 12 V a volt lost in a cable is a twelfth of everything the stream gives. Between battery and"
                    + " inverter it also makes the inverter cut off early.")
            .formula("direct: ΔV = 2 l I r; alternator run: ΔV = √3 l I r; as a share of the battery's resting voltage")
            .judged("running on the nozzle set with most current; battery full for the dump load; inverter at its"
                    + " continuous power")
            .source("IEC 60364-5-52 annex G as a guide (5 % for uses other than lighting); 2 % to an inverter: common"
                    + " practice")
            .source("IEC 60228 conductor resistances at working temperature")
            .limit("share", RATIO, 5, "%", "IEC 60364-5-52 annex G")
            .limit("inverter-share", RATIO, 2, "%", COMMON_PRACTICE)
            .passes("small-enough", "The run {run} loses {drop} ({value}, {power}).")
            .fails(
                    "too-much",
                    "The run {run} loses {drop} ({value} of the battery's voltage, {power}); good is {limit}.")
            .open("not-loaded", RunCapacity.NOT_LOADED)
            .judgeAll(j -> RunCapacity.each(j, (spot, run) -> judge(j, spot, run)))
            .leastWayOut("thicker", Conductors.THICKER, Conductors::thicker)
            .build();

    private RunVoltageDrop() {}

    private static Outcome judge(Judgement j, Spot spot, CableDuty.Carries run) {
        return spot.during(run.during())
                .with(Runs.arg("run", j.design(), run.cable()))
                .with("drop", run.drop(), VOLTAGE)
                .with("power", run.lostPower(), POWER)
                .atMost(
                        run.drop() / j.numbers().battery().restingVoltage(),
                        j.limit(run.cable().joins(Place.INVERTER) ? "inverter-share" : "share"));
    }
}
