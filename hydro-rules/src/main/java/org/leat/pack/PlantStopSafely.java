package org.leat.pack;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Safeguards;
import org.leat.design.StopWater;

/** A way to stop the water that neither hammers the pipe nor unloads the runner. */
final class PlantStopSafely implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("plant/stop-safely", Level.ERROR)
            .title("a way to stop the water that harms neither pipe nor runner")
            .why(
                    "Sooner or later the wheel must stop at once. A lever valve hammers the pipe, a pulled plug lets the wheel run"
                            + " away; a plate swung into the jet does neither.")
            .formula("a deflector or a slow valve stated")
            .judged("as built; what a slow valve does to the pipe is judged by penstock/surge-pressure")
            .source(RuleCard.COMMON_PRACTICE)
            .message("deflector")
            .message("slow-valve")
            .message("hammers")
            .message("nothing")
            .message("fit-deflector")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Safeguards safeguards = j.design().safeguards();
        StopWater stop = safeguards == null ? null : safeguards.stopWater();
        Spot spot = j.at("/safeguards/stop-water");
        if (stop == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        return List.of(
                switch (stop) {
                    case DEFLECTOR -> spot.pass("deflector");
                    case SLOW_VALVE -> spot.pass("slow-valve");
                    case QUICK_VALVE -> spot.fail("hammers");
                    case NONE -> spot.fail("nothing");
                });
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Stated.otherwise(this, j, failure, "fit-deflector", StopWater.DEFLECTOR);
    }
}
