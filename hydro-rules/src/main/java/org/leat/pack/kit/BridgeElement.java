package org.leat.pack.kit;

import static org.leat.quantity.Quantities.amps;
import static org.leat.quantity.Quantities.ohms;
import static org.leat.quantity.Quantities.volts;
import static org.leat.quantity.Quantities.watts;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Change;
import org.leat.check.Edit;
import org.leat.design.DumpLoad;
import org.leat.design.DumpLoadBuilder;
import org.leat.design.DumpSide;
import org.leat.plant.cases.Cases;
import org.leat.plant.solved.EnergyAccount.Stage;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/**
 * An element on the bridge's side of the battery's fuse that takes all the turbine gives, at a trigger of its own.
 *
 * @param trigger V
 * @param resistance cold, Ω
 * @param power that it must stand, W
 */
public record BridgeElement(double trigger, double resistance, double power) {

    /** Over what the turbine gives while it runs at its best. */
    private static final double ROOM = 1.4;

    private static final double SWITCH = 1.25;

    /** {@return elements before a tracking regulator, for triggers inside the bridge's window, the best first; the plant is solved} */
    public static List<BridgeElement> in(Cases cases) {
        double power = cases.running().stream()
                .mapToDouble(r -> r.operatingPoint().energy().at(Stage.DIRECT_CURRENT))
                .max()
                .orElse(0);
        List<BridgeElement> all = new ArrayList<>();
        if (power > 0) {
            for (double trigger : BridgeWindow.of(cases).triggers(cases.numbers())) {
                double ohms = StandardSizes.resistance(trigger * trigger / (ROOM * power));
                double rated = Math.ceil(1.2 * trigger * trigger / ohms / 50) * 50;
                all.add(new BridgeElement(trigger, ohms, rated));
            }
        }
        return all;
    }

    /** {@return as a dump load of its own} */
    public DumpLoad alone() {
        return DumpLoadBuilder.builder()
                .resistance(ohms(resistance))
                .powerRating(watts(power))
                .triggerVoltage(volts(trigger))
                .side(DumpSide.BRIDGE)
                .build();
    }

    /** {@return in place of the elements and the setting of a dump load that is there} */
    public Change inPlaceOf(DumpLoad now) {
        List<Edit> edits = new ArrayList<>();
        edits.add(new Edit("/dump-load/trigger-voltage", volts(trigger)));
        edits.add(new Edit("/dump-load/resistance", ohms(resistance)));
        if (now.resistanceHot() != null) {
            double warms = now.resistance() == null ? 1 : Si.of(now.resistanceHot()) / Si.of(now.resistance());
            double hot = Math.rint(1000 * resistance * warms) / 1000;
            edits.add(new Edit("/dump-load/resistance-hot", ohms(hot)));
        }
        if (now.powerRating() != null) {
            edits.add(new Edit("/dump-load/power-rating", watts(power)));
        }
        if (now.ratedVoltage() != null) {
            double volts = Math.ceil(Math.sqrt(power * resistance));
            edits.add(new Edit("/dump-load/rated-voltage", volts(volts)));
        }
        double current = SWITCH * trigger / resistance;
        if (now.switchRating() != null && Si.of(now.switchRating()) < current) {
            double rating = Math.ceil(current / 5) * 5;
            edits.add(new Edit("/dump-load/switch-rating", amps(rating)));
        }
        return told(Change.of(edits));
    }

    /** {@return a change that says what the element is} */
    public Change told(Change change) {
        return change.with("trigger", trigger, QuantityKind.VOLTAGE)
                .with("switch", StandardSizes.switchRating(trigger / resistance), QuantityKind.CURRENT)
                .with("resistance", resistance, QuantityKind.RESISTANCE)
                .with("power", power, QuantityKind.POWER);
    }
}
