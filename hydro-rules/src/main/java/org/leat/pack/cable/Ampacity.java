package org.leat.pack.cable;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.CURRENT;

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
            .either("carries", "overloaded", "The run {run} carries {value}; as laid it may carry {limit}.")
            .open("not-loaded", RunCapacity.NOT_LOADED)
            .judgeAll(j -> RunCapacity.each(j, (spot, run) -> judge(j, spot, run)))
            .leastWayOut("thicker", Conductors.THICKER, Conductors::thicker)
            .build();

    private Ampacity() {}

    private static Outcome judge(Judgement j, Spot spot, CableDuty.Carries run) {
        Spot during = spot.during(run.during());
        return during.with(Runs.arg("run", j.design(), run.cable()))
                .atMost(run.current(), RunCapacity.capacity(j, during, run), CURRENT);
    }
}
