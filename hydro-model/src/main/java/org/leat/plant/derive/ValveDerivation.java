package org.leat.plant.derive;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.leat.design.ElementPath;
import org.leat.design.Fitting;
import org.leat.design.Section;
import org.leat.design.ShutOff;
import org.leat.plant.numbers.PenstockNumbers.ValveNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Valves that stop the water of a plant. */
final class ValveDerivation {

    /** Time in which a lever is turned, s. */
    private static final double LEVER = 1;

    /** Time in which a spindle is turned, s. */
    private static final double SCREW = 10;

    private ValveDerivation() {}

    /** {@return the valves of a section; one whose time is not stated is taken as shut the way its kind usually is} */
    static List<ValveNumbers> of(Section section, String path, double bore, Assume assume) {
        List<ValveNumbers> valves = new ArrayList<>();
        for (int i = 0; i < section.fittings().size(); i++) {
            Fitting fitting = section.fittings().get(i);
            ShutOff kind = kind(fitting);
            if (kind != null) {
                String time = ElementPath.item(path + "/fittings", section.fittings(), i) + "/closing-time";
                Quantity<Time> stated = fitting.closingTime();
                valves.add(new ValveNumbers(
                        kind,
                        stated == null ? assumed(kind, time, assume) : Si.of(stated),
                        Si.of(fitting.bore(), bore),
                        stated == null ? null : time));
            }
        }
        return valves;
    }

    private static double assumed(ShutOff kind, String path, Assume assume) {
        double usual = kind == ShutOff.BALL_VALVE || kind == ShutOff.BUTTERFLY_VALVE ? LEVER : SCREW;
        return assume.placeholder(path, QuantityKind.TIME, usual, 0.2 * usual, 5 * usual, "assumed/closing-time");
    }

    /** The kind of a fitting that can be shut; null for what cannot. */
    private static @Nullable ShutOff kind(Fitting fitting) {
        return switch (fitting.kind()) {
            case BALL_VALVE -> ShutOff.BALL_VALVE;
            case BUTTERFLY_VALVE -> ShutOff.BUTTERFLY_VALVE;
            case GATE_VALVE -> ShutOff.GATE_VALVE;
            case GLOBE_VALVE -> ShutOff.GLOBE_VALVE;
            default -> fitting.closingTime() == null ? null : ShutOff.GATE_VALVE;
        };
    }

    /** {@return what shuts a nozzle; not stated, what stops the flow in the least of its travel} */
    static ShutOff kind(@Nullable ShutOff by) {
        return by == null ? ShutOff.GATE_VALVE : by;
    }
}
