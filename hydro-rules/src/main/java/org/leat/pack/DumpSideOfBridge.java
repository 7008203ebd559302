package org.leat.pack;

import java.util.List;
import java.util.Objects;
import org.leat.check.Judgement;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.DumpLoad;
import org.leat.design.DumpSide;

/** Whether the dump load still holds the turbine when the battery is lost. */
final class DumpSideOfBridge implements Rule {

    private static final RuleCard CARD = RuleCard.of("dump/side-of-bridge", Level.ERROR)
            .title("whether the dump load still holds the turbine when the battery is lost")
            .why(
                    "A dump load at the battery's poles goes with the battery: when its fuse blows or its management opens, nothing"
                            + " is left that brakes the wheel. One timed by the battery's charge does not know of it either.")
            .formula("on the bridge's side of every fuse, and switched on by voltage")
            .judged("battery removed")
            .source(RuleCard.COMMON_PRACTICE)
            .message("fed-by-bridge")
            .message("goes-with-battery")
            .message("none")
            .message("move")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Outcome> without = Dumped.without(j, "none");
        if (without != null) {
            return without;
        }
        DumpLoad dump = Objects.requireNonNull(j.design().dumpLoad());
        Spot spot = j.at("/dump-load/side").during("battery-removed");
        if (dump.side() == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        if (dump.side() == DumpSide.BATTERY) {
            return List.of(spot.fail("goes-with-battery"));
        }
        return List.of(
                dump.triggerVoltage() == null
                        ? spot.notGiven("/dump-load/trigger-voltage")
                        : spot.pass("fed-by-bridge"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Stated.otherwise(this, j, failure, "move", DumpSide.BRIDGE);
    }
}
