package org.leat.report;

import java.util.Locale;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import org.leat.design.Design;
import org.leat.design.Intake;
import org.leat.design.Screen;
import org.leat.plant.Plant;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.readings.Diagnosis.Ranked;
import org.leat.readings.FaultKind;

/** What is wrong, in words: its name, its size, and what to look at with hands and eyes. */
final class FaultWords {

    private final Plant plant;

    FaultWords(Plant plant) {
        this.plant = plant;
    }

    /** {@return its name} */
    static String name(FaultKind kind) {
        return switch (kind) {
            case NOTHING -> "nothing wrong that these readings show";
            case SCREEN_BLOCKED -> "screen or inlet blocked";
            case PIPE_PINCHED -> "pipe pinched or partly shut";
            case AIR_IN_PIPE -> "air in the pipe";
            case LEAK -> "water lost on the way";
            case HEAD_LOWER -> "less head than thought";
            case HEAD_HIGHER -> "more head than thought";
            case NOZZLE_WORN -> "nozzle worn";
            case NOZZLE_BLOCKED -> "something in a nozzle";
            case NOZZLE_OTHER -> "another nozzle than thought";
            case WHEEL_WORN -> "buckets worn, broken or clogged";
            case BEARING_DRAG -> "bearing or seal drags";
            case MAGNETS_WEAKER -> "magnets weaker, or one loose";
            case WINDING_WARMER -> "winding too warm";
            case PHASE_OPEN -> "a lead or winding open";
            case DIODE_OPEN -> "a diode open";
            case DIODE_SHORTED -> "a diode shorted";
            case JOINT_BAD -> "a bad joint between bridge and battery";
            case DUMP_ON -> "dump load on while it should not be";
            case DUMP_DEAD -> "dump load dead";
            case REGULATOR_HOLDS_BACK -> "regulator holds back";
            case BATTERY_NOT_TAKING -> "battery full, or not taking";
            case METER_SHOWS_PEAK -> "meter shows peak, not rms";
            case METER_ON_PHASE -> "volts to the star point taken for volts between leads";
        };
    }

    /** {@return what to look at with hands and eyes} */
    static String look(FaultKind kind) {
        return switch (kind) {
            case NOTHING -> "";
            case SCREEN_BLOCKED -> "Look at the screen and the inlet; rake it, and read again.";
            case PIPE_PINCHED -> "Walk the pipe: kinks, stones on it, a valve not all open.";
            case AIR_IN_PIPE -> "Listen and feel at every high point; open the vents; does the jet spit?";
            case LEAK -> "Walk the pipe, wet ground, joints that moved: shut the water before you touch one.";
            case HEAD_LOWER, HEAD_HIGHER -> "Read the standing pressure with every nozzle shut; level the fall again.";
            case NOZZLE_WORN -> "Shut the water; try the shank of a new drill of its bore in the nozzle.";
            case NOZZLE_BLOCKED -> "Shut the water; look through the nozzle; does the jet split or spray?";
            case NOZZLE_OTHER -> "Shut the water; measure the bore that is fitted.";
            case WHEEL_WORN ->
                "Shut the water; look at every bucket's edge, feel for cracks; is the jet in the middle?";
            case BEARING_DRAG -> "Shut the water; turn the wheel by hand, feel, listen; is the bearing warm?";
            case MAGNETS_WEAKER ->
                "Shut the water, do not run it: turn it by hand, listen for scraping, count even clicks, look at the gap.";
            case WINDING_WARMER -> "Feel for hot air, smell; is the cooling clogged? Measure the resistance warm.";
            case PHASE_OPEN ->
                "Shut the water; measure between the three pairs of leads, ohms and volts; tug each joint.";
            case DIODE_OPEN -> "Shut the water, battery off; test each diode both ways; is one cold?";
            case DIODE_SHORTED ->
                "Shut the water now, battery off; one diode conducts both ways, bridge and winding are hot.";
            case JOINT_BAD ->
                "Feel no joint while it runs: measure volts across each joint under load; look for brown.";
            case DUMP_ON -> "Is the dump load warm, its lamp on? Look at its switch and at its trigger voltage.";
            case DUMP_DEAD -> "Shut the water before the battery is full: measure the element, its fuse, its switch.";
            case REGULATOR_HOLDS_BACK -> "Read what the regulator shows; its set points; is it hot?";
            case BATTERY_NOT_TAKING ->
                "Read the battery's own monitor; is it full, cold, or switched off by its management?";
            case METER_SHOWS_PEAK -> "Read another meter of true rms; is the range a.c.?";
            case METER_ON_PHASE -> "Put the meter between two of the three leads.";
        };
    }

    /** {@return its size with its range; "" where it has none} */
    String size(Ranked ranked) {
        if (Double.isNaN(ranked.size())) {
            return "";
        }
        String set = ranked.nozzles().isEmpty() ? "" : ", set " + PlainText.of(ranked.nozzles());
        return switch (ranked.kind()) {
            case SCREEN_BLOCKED -> {
                OptionalDouble now = blocked(ranked.size());
                OptionalDouble low = blocked(ranked.low());
                OptionalDouble high = blocked(ranked.high());
                yield (now.isEmpty() || low.isEmpty() || high.isEmpty()
                                ? ""
                                : "blocked to " + share(now.getAsDouble()) + " ("
                                        + ends(share(low.getAsDouble()), share(high.getAsDouble())) + "), ")
                        + "takes " + metres(ranked);
            }
            case PIPE_PINCHED -> "takes " + metres(ranked);
            case AIR_IN_PIPE, HEAD_LOWER, HEAD_HIGHER -> metres(ranked);
            case LEAK -> range(ranked, built(), QuantityKind.VOLUME_FLOW);
            case NOZZLE_WORN -> "bore " + share(ranked.size()) + " wider (" + shares(ranked) + ")" + set;
            case NOZZLE_BLOCKED -> share(ranked.size()) + " of its area (" + shares(ranked) + ")" + set;
            case NOZZLE_OTHER -> "one of " + UsualUnits.show(ranked.size(), QuantityKind.LENGTH) + set;
            case WHEEL_WORN -> share(ranked.size()) + " of its torque lost (" + shares(ranked) + ")";
            case BEARING_DRAG -> share(ranked.size()) + " of the torque (" + shares(ranked) + ")";
            case MAGNETS_WEAKER -> share(ranked.size()) + " weaker (" + shares(ranked) + ")";
            case WINDING_WARMER ->
                UsualUnits.show(ranked.size(), QuantityKind.TEMPERATURE_DIFFERENCE, 2) + " too warm ("
                        + UsualUnits.show(ranked.low(), QuantityKind.TEMPERATURE_DIFFERENCE, 2) + " to "
                        + UsualUnits.show(ranked.high(), QuantityKind.TEMPERATURE_DIFFERENCE, 2) + ")";
            case JOINT_BAD ->
                "takes " + range(ranked, plant.numbers().battery().restingVoltage(), QuantityKind.VOLTAGE);
            case DUMP_ON -> share(ranked.size()) + " of it (" + shares(ranked) + ")";
            case REGULATOR_HOLDS_BACK -> "voltage " + share(ranked.size()) + " too high (" + shares(ranked) + ")";
            case BATTERY_NOT_TAKING -> share(ranked.size()) + " of the current goes elsewhere (" + shares(ranked) + ")";
            default -> "";
        };
    }

    private double built() {
        return plant.solve().running().get(0).water().flow();
    }

    private String metres(Ranked ranked) {
        return range(ranked, plant.numbers().site().grossHead(), QuantityKind.LENGTH);
    }

    private static String range(Ranked ranked, double unit, QuantityKind kind) {
        double size = ranked.size() * unit;
        return UsualUnits.show(size, kind) + " ("
                + ends(UsualUnits.show(ranked.low() * unit, kind), UsualUnits.show(ranked.high() * unit, kind)) + ")";
    }

    /** {@return from one to the other, their unit once where it is the same} */
    static String ends(String low, String high) {
        int unit = high.lastIndexOf(' ');
        boolean once = unit > 0 && low.endsWith(high.substring(unit));
        return (once ? low.substring(0, low.lastIndexOf(' ')) : low) + " to " + high;
    }

    /** Share of the screen that is blocked, from the loss it makes at the flow of the sound plant; empty without a screen. */
    private OptionalDouble blocked(double size) {
        Design design = plant.design();
        Intake intake = design.intake();
        Screen screen = intake == null ? null : intake.screen();
        double sound = plant.numbers().penstock().screenLoss();
        if (screen == null || sound <= 0) {
            return OptionalDouble.empty();
        }
        double flow = built();
        double now = sound + size * plant.numbers().site().grossHead() / (flow * flow);
        Quantity<?> told = screen instanceof Screen.DrilledHoles holes
                ? holes.blockedShare()
                : screen instanceof Screen.Mesh mesh ? mesh.blockedShare() : ((Screen.Bars) screen).blockedShare();
        double before = told == null ? 0 : Si.of(told);
        return OptionalDouble.of(1 - (1 - before) * Math.sqrt(sound / now));
    }

    private static String shares(Ranked ranked) {
        return ends(share(ranked.low()), share(ranked.high()));
    }

    /** {@return a probability in per cent, none of them whole} */
    static String probability(double probability) {
        return probability > 0.999 ? "over 99.9 %" : share(probability);
    }

    /** {@return a share in per cent} */
    static String share(double share) {
        double percent = 100 * share;
        return String.format(
                Locale.ROOT, percent < 10 || (percent > 95 && percent < 99.95) ? "%.1f %%" : "%.0f %%", percent);
    }
}
