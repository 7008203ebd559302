package org.leat.pack.regulator;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.ChargeRegulator;
import org.leat.design.RegulatorKind;
import org.leat.pack.kit.TrackingRegulator;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.RegulatorNumbers;
import org.leat.plant.solved.OperatingPoint;

/** Whether the voltage of most power lies inside the tracking window. */
final class Window {

    static final Rule RULE = Rule.of(
                    "regulator/window", WARNING, "whether the voltage of most power lies inside the tracking window")
            .why(
                    "A tracking regulator finds the best voltage only inside its window. At the edge of it the turbine runs at"
                            + " the window's voltage, not at its own.")
            .formula("bus voltage of most power within the window, and not held at its edge")
            .judged("running, each nozzle set on hand")
            .source(COMMON_PRACTICE)
            .passes("inside", "The regulator finds its voltage of most power at {value}, inside its window.")
            .fails(
                    "at-edge",
                    "The regulator is held at the edge of its window, {value} ({limit}): more power lies beyond.")
            .notApplicable("not-tracking", "Not judged: the regulator does not track.")
            .fails("no-current", "No voltage inside the window lets current flow.")
            .judgeAll(Window::judge)
            .wayOut(
                    "window",
                    "A regulator that tracks from {from} to {to} and stands {stands} at its input, the most of any case.",
                    Window::other)
            .build();

    private Window() {}

    private static List<Outcome> judge(Judgement j) {
        List<Running> all = j.solved().running();
        Spot spot = j.at("/regulator/tracking-window");
        ChargeRegulator regulator = j.design().regulator();
        if (regulator == null || regulator.kind() != RegulatorKind.TRACKING) {
            return List.of(spot.says("not-tracking"));
        }
        return regulator.trackingWindow() == null
                ? List.of(spot.notGiven(spot.path()))
                : j.each(all, running -> judge(j, running, spot.during(running)));
    }

    private static Outcome judge(Judgement j, Running running, Spot spot) {
        OperatingPoint.Tracking tracking = running.operatingPoint().tracking();
        if (tracking == null || !running.operatingPoint().loaded()) {
            return spot.says("no-current");
        }
        double nudge = switch (tracking.bound()) {
            case WINDOW_FROM -> -1e-6;
            case WINDOW_TO -> 1e-6;
            default -> 0;
        };
        RegulatorNumbers regulator = j.numbers().regulator();
        return spot.within(tracking.voltage() * (1 + nudge), regulator.windowFrom(), regulator.windowTo(), VOLTAGE);
    }

    private static Stream<Change> other(Judgement j, Outcome.Fail failure) {
        double from = j.numbers().battery().absorptionVoltage() + 2;
        return Stream.of(60, 75, 100, 150, 200, 250)
                .filter(to -> to > from)
                .map(to -> TrackingRegulator.change(j, from, to, "stands")
                        .with("from", from, VOLTAGE)
                        .with("to", to, VOLTAGE));
    }
}
