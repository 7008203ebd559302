package org.leat.pack.cable;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.CURRENT;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.Conductors;
import org.leat.pack.kit.RunCapacity;
import org.leat.pack.kit.Runs;
import org.leat.plant.cases.CableDuty;

/** Lasting current of each run against what the cable carries as it is laid. */
final class Ampacity {

    static final Rule RULE = Rule.of("cable/ampacity", ERROR, "current against what the cable carries")
            .why("A cable run above its capacity overheats inside its wall or conduit. A turbine runs day and night, so"
                    + " the cable never cools.")
            .formula("greatest lasting current ≤ tabled capacity · ambient factor · grouping factor · parallel cores;"
                    + " in the ground (d1, d2) at its temperature, the soil no drier than 2.5 K m/W")
            .judged("running on the nozzle set with most current; battery full for the dump load; inverter at its"
                    + " continuous power")
            .source("IEC 60364-5-52 tables B.52.2 to B.52.5, B.52.10, B.52.12, B.52.14, B.52.15, B.52.17 to B.52.19")
            .passes("carries", "The run {run} carries {value}; as laid it may carry {limit}.")
            .fails("overloaded", "The run {run} carries {value}; as laid it may carry {limit}.")
            .open("not-loaded", "Cannot be judged: no load is told that this run feeds. Tell it, with supply: bus.")
            .judgeAll(Ampacity::judge)
            .leastWayOut(
                    "thicker",
                    "Conductors of {area:mm²}.",
                    (j, failure) -> Conductors.thicker(j.design(), failure.path()))
            .build();

    private Ampacity() {}

    private static List<Outcome> judge(Judgement j) {
        List<CableDuty> duties = j.solved().cableDuties();
        return duties.isEmpty() ? List.of(j.at("/cables").notGiven("/cables")) : j.each(duties, duty -> judge(j, duty));
    }

    private static Outcome judge(Judgement j, CableDuty duty) {
        Spot spot = j.at(duty.cable().path() + "/conductor/area");
        if (duty instanceof CableDuty.NotLoaded) {
            return spot.says("not-loaded");
        }
        CableDuty.Carries carries = RunCapacity.carries(spot, duty);
        Spot during = spot.during(carries.during());
        return during.with(Runs.arg("run", j.design(), duty.cable()))
                .atMost(carries.current(), RunCapacity.capacity(j, during, carries), CURRENT);
    }
}
