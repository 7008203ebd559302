package org.leat.pack;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricPotential;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.DumpLoad;
import org.leat.design.DumpSide;
import org.leat.pack.Search.Candidate;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Whether the dump load still holds the turbine when the battery is lost. */
final class DumpSideOfBridge implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("dump/side-of-bridge", Level.ERROR)
            .title("whether the dump load still holds the turbine when the battery is lost")
            .why(
                    "A dump load at the battery's poles goes with the battery: when its fuse blows or its management opens, nothing"
                            + " is left that brakes the wheel. One timed by the battery's charge does not know of it either.")
            .formula(
                    "on the bridge's side of every fuse, and switched on by a voltage the battery may still be charged with")
            .judged("battery removed")
            .source(RuleCard.COMMON_PRACTICE)
            .message("fed-by-bridge")
            .message("goes-with-battery")
            .message("triggers-late")
            .message("lower", "voltage")
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
        if (dump.triggerVoltage() == null) {
            return List.of(spot.notGiven("/dump-load/trigger-voltage"));
        }
        Amount limit = j.plant().numbers().battery().chargeVoltageLimit();
        if (!(limit instanceof Amount.Known highest)) {
            return List.of(Open.because(spot, limit));
        }
        Comparison inTime = Comparison.atMost(Si.of(dump.triggerVoltage()), highest.value(), QuantityKind.VOLTAGE);
        return List.of(
                inTime.holds() ? spot.pass("fed-by-bridge") : spot.compare(inTime, "fed-by-bridge", "triggers-late"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison late = failure.comparison();
        if (late == null) {
            return Stated.otherwise(this, j, failure, "move", DumpSide.BRIDGE);
        }
        Edit lower = new Edit("/dump-load/trigger-voltage", Si.quantity(late.high(), "V", ElectricPotential.class));
        Arg voltage = Arg.of("voltage", late.high(), QuantityKind.VOLTAGE);
        return Search.first(this, j, failure, Stream.of(Candidate.of("lower", lower, voltage))).stream()
                .toList();
    }
}
