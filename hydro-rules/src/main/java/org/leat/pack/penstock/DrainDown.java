package org.leat.pack.penstock;

import static org.leat.check.Level.ERROR;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Vent;
import org.leat.pack.kit.OutsidePressure;
import org.leat.pack.kit.Vents;
import org.leat.plant.duties.VentAir;

/** The pipe burst or let go at its lower end: air must enter at the top as fast as the water falls out. */
final class DrainDown {

    static final Rule RULE = Rule.of("penstock/drain-down", ERROR, "air into a pipe that runs out through a break")
            .why(
                    "When a joint lets go low down, somebody runs up and shuts the top. The pipe then empties far faster than through its"
                            + " nozzles, and a vent made for these is too narrow: the whole line folds, not just the one joint.")
            .formula("flow of the break: Hazen-Williams, C 110, on the mean slope with the least bore; the vent: "
                    + Vents.FORMULA)
            .judged("the top shut, the pipe broken at the worst place, as hot as it gets, the air as cold as it gets")
            .source("burst flow: an air valve maker's notes, as AWWA M51")
            .source(Vents.SOURCE)
            .limits(OutsidePressure.LIMITS)
            .passes(
                    "stands",
                    "With no air let in at all the wall stands the suction of the water that drains out below.")
            .passes("vented", "A vent of {value:mm} lets air in as fast as {flow} run out of a broken pipe.")
            .fails(
                    "narrow",
                    "{flow} run out of a broken pipe; a vent of {value:mm} lets air in with more than {drop:bar} of suction, the most that"
                            + " is good; that takes {limit:mm}.")
            .review("frozen", "The wall does not stand it alone, and the vent freezes shut. See intake/vent-freezes.")
            .notApplicable(
                    "no-vent",
                    "There is no vent below the shut-off: intake/vent asks whether the wall stands it alone.")
            .judge(DrainDown::judge)
            .wayOut(
                    "wider",
                    "A vent of {bore:mm} just below the shut-off, its mouth above the highest water level.",
                    (j, failure) -> Vents.forFlow(j, VentAir.burstFlow(j.numbers())))
            .build();

    private DrainDown() {}

    private static Outcome judge(Judgement j) {
        Spot spot = j.at(Vents.PATH);
        if (Vents.wallStandsIt(j, spot)) {
            return spot.says("stands");
        }
        Vent vent = Vents.below(j, spot);
        if (vent == null) {
            return spot.says("no-vent");
        }
        return Vents.staysOpen(j, spot, vent)
                ? Vents.wideEnough(j, spot.saying("vented", "narrow"), vent, VentAir.burstFlow(j.numbers()))
                : spot.says("frozen");
    }
}
