package org.leat.pack.plant;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.StopWater;
import org.leat.pack.kit.DesignParts;
import org.leat.pack.kit.FieldChanges;

/** A way to stop the water that neither hammers the pipe nor unloads the runner. */
final class StopSafely {

    static final Rule RULE = Rule.of(
                    "plant/stop-safely", ERROR, "a way to stop the water that harms neither pipe nor runner")
            .why(
                    "Sooner or later the wheel must stop at once. A lever valve hammers the pipe, a pulled plug lets the wheel"
                            + " run away; a plate swung into the jet does neither.")
            .formula("a deflector or a slow valve stated")
            .judged("as built; what a slow valve does to the pipe is judged by penstock/surge-pressure")
            .source(COMMON_PRACTICE)
            .passes("deflector", "A plate swung into the jet stops the wheel and not the water.")
            .passes("slow-valve", "A valve of many turns stops the water.")
            .fails("hammers", "Only a lever valve stops the water: shut in a fright it hammers the pipe.")
            .fails("nothing", "Nothing stops the water from the jet.")
            .judge(StopSafely::judge)
            .wayOut("fit-deflector", "A plate that swings into the jet.", FieldChanges.to(StopWater.DEFLECTOR))
            .build();

    private StopSafely() {}

    private static Outcome judge(Judgement j) {
        Spot spot = j.at("/safeguards/stop-water");
        return spot.says(
                switch (spot.given(DesignParts.safeguards(j).stopWater())) {
                    case DEFLECTOR -> "deflector";
                    case SLOW_VALVE -> "slow-valve";
                    case QUICK_VALVE -> "hammers";
                    case NONE -> "nothing";
                });
    }
}
