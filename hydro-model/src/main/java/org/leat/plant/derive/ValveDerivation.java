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
import org.leat.hydraulics.ValveKind;
import org.leat.plant.numbers.ValveNumbers;
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
            ValveKind kind = kind(fitting);
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

    private static double assumed(ValveKind kind, String path, Assume assume) {
        double usual = kind == ValveKind.BALL || kind == ValveKind.BUTTERFLY ? LEVER : SCREW;
        return assume.placeholder(path, QuantityKind.TIME, usual, 0.2 * usual, 5 * usual, "assumed/closing-time");
    }

    /** The kind of a fitting that can be shut; null for what cannot. */
    private static @Nullable ValveKind kind(Fitting fitting) {
        return switch (fitting.kind()) {
            case BALL_VALVE -> ValveKind.BALL;
            case BUTTERFLY_VALVE -> ValveKind.BUTTERFLY;
            case GATE_VALVE -> ValveKind.GATE;
            case GLOBE_VALVE -> ValveKind.GLOBE;
            default -> fitting.closingTime() == null ? null : ValveKind.GATE;
        };
    }

    /** {@return the kind of what shuts a nozzle; not stated, the one that stops the flow in the least of its travel} */
    static ValveKind kind(@Nullable ShutOff by) {
        if (by == null) {
            return ValveKind.GATE;
        }
        return switch (by) {
            case NEEDLE -> ValveKind.NEEDLE;
            case GATE_VALVE -> ValveKind.GATE;
            case GLOBE_VALVE -> ValveKind.GLOBE;
            case BALL_VALVE -> ValveKind.BALL;
            case BUTTERFLY_VALVE -> ValveKind.BUTTERFLY;
        };
    }
}
