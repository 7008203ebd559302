package org.leat.pack.dump;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricPotential;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Cable;
import org.leat.design.DumpLoad;
import org.leat.design.DumpSide;
import org.leat.design.ElementPath;
import org.leat.design.Place;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.FieldChanges;

/** Whether the dump load still holds the turbine when the battery is lost. */
final class SideOfBridge {

    static final Rule RULE = Rule.of(
                    "dump/side-of-bridge",
                    ERROR,
                    "whether the dump load still holds the turbine when the battery is lost")
            .why(
                    "A dump load at the battery's poles goes with the battery: when its fuse blows or its management opens, nothing"
                            + " is left that brakes the wheel. One timed by the battery's charge does not know of it either.")
            .formula(
                    "on the bridge's side of every fuse, and switched on by a voltage the battery may still be charged with; before a"
                            + " tracking or series regulator see regulator/input-clamp")
            .judged("battery removed")
            .source(COMMON_PRACTICE)
            .passes(
                    "fed-by-bridge",
                    "When the battery is lost the bridge still feeds the dump load, switched by voltage.")
            .fails(
                    "triggers-late",
                    "The dump load is switched on at {value}, but the battery may be charged with {limit}: what"
                            + " hangs on the bus meets the higher voltage first.")
            .fails(
                    "goes-with-battery",
                    "The dump load hangs at the battery: when that is lost, nothing brakes the wheel.")
            .notApplicable("none", DumpLoads.NONE)
            .judge(DumpLoads.judge(SideOfBridge::judge))
            .wayOut(
                    "move",
                    "Join it on the bridge's side of every fuse.",
                    ChangesForText.only("goes-with-battery", SideOfBridge::moved))
            .wayOut("lower", "Switch it on at {voltage}.", ChangesForText.only("triggers-late", SideOfBridge::lower))
            .build();

    private SideOfBridge() {}

    private static Outcome judge(Judgement j, DumpLoad dump) {
        Spot spot = j.at("/dump-load/side").during("battery-removed");
        if (spot.given(dump.side()) == DumpSide.BATTERY) {
            return spot.says("goes-with-battery");
        }
        if (j.numbers().regulator().divides()) {
            // there the bridge has voltages of its own: regulator/input-clamp
            spot.si("/dump-load/trigger-voltage", dump.triggerVoltage());
            return spot.says("fed-by-bridge");
        }
        double trigger = spot.si("/dump-load/trigger-voltage", dump.triggerVoltage());
        double highest = spot.known(j.numbers().battery().chargeVoltageLimit());
        return trigger <= highest ? spot.says("fed-by-bridge") : spot.atMost(trigger, highest, VOLTAGE);
    }

    /** With its run, where that leads to the battery. */
    private static Stream<Change> moved(Judgement j, Outcome.Fail failure) {
        Change change = Change.of(failure.path(), DumpSide.BRIDGE);
        List<Cable> cables = j.design().cables();
        for (int i = 0; i < cables.size(); i++) {
            String at = ElementPath.item("/cables", cables, i);
            if (cables.get(i).from() == Place.BATTERY && cables.get(i).to() == Place.DUMP_LOAD) {
                change = change.and(at + "/from", Place.RECTIFIER);
            } else if (cables.get(i).to() == Place.BATTERY && cables.get(i).from() == Place.DUMP_LOAD) {
                change = change.and(at + "/to", Place.RECTIFIER);
            }
        }
        return Stream.of(change);
    }

    private static Stream<Change> lower(Judgement j, Outcome.Fail failure) {
        return Stream.of(FieldChanges.told(
                "/dump-load/trigger-voltage", "voltage", failure.limit(), "V", ElectricPotential.class));
    }
}
