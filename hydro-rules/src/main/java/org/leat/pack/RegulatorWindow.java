package org.leat.pack;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.RegulatorKind;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.RegulatorNumbers;
import org.leat.plant.solve.OperatingPoint;
import org.leat.quantity.QuantityKind;

/** Whether the voltage of most power lies inside the tracking window. */
final class RegulatorWindow implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("regulator/window", Level.WARNING)
            .title("whether the voltage of most power lies inside the tracking window")
            .why(
                    "A tracking regulator finds the best voltage only inside its window. At the edge of it the turbine runs at"
                            + " the window's voltage, not at its own.")
            .formula("bus voltage of most power within the window, and not held at its edge")
            .judged("running, each nozzle set on hand")
            .source(RuleCard.COMMON_PRACTICE)
            .message("inside")
            .message("at-edge")
            .message("not-tracking")
            .message("no-current")
            .message("window", "from", "to")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Spot spot = j.at("/regulator/tracking-window");
        if (j.design().regulator() == null) {
            return List.of(spot.notApplicable("not-tracking"));
        }
        if (j.design().regulator().kind() != RegulatorKind.TRACKING) {
            return List.of(spot.notApplicable("not-tracking"));
        }
        if (j.design().regulator().trackingWindow() == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        return j.cases().running().stream()
                .map(r -> judge(j, r, spot.during(r.id())))
                .toList();
    }

    private static Outcome judge(Judgement j, Running running, Spot spot) {
        OperatingPoint.Tracking tracking = running.operatingPoint().tracking();
        if (tracking == null || running.operatingPoint().hold() == OperatingPoint.Hold.BELOW_CUT_IN) {
            return spot.fail("no-current");
        }
        RegulatorNumbers regulator = j.plant().numbers().regulator();
        boolean held = tracking.bound() == OperatingPoint.Tracking.Bound.WINDOW_FROM
                || tracking.bound() == OperatingPoint.Tracking.Bound.WINDOW_TO;
        double nudge = held ? (tracking.bound() == OperatingPoint.Tracking.Bound.WINDOW_TO ? 1e-6 : -1e-6) : 0;
        return spot.compare(
                Comparison.within(
                        tracking.voltage() * (1 + nudge),
                        regulator.windowFrom(),
                        regulator.windowTo(),
                        QuantityKind.VOLTAGE),
                "inside",
                "at-edge");
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        double from = j.plant().numbers().battery().absorptionVoltage() + 2;
        return Search.first(
                        this,
                        j,
                        failure,
                        Stream.of(60, 75, 100, 150, 200, 250)
                                .filter(to -> to > from)
                                .map(to -> new Candidate(
                                        "window",
                                        TrackingRegulator.edits(j.design(), from, to),
                                        List.of(
                                                Arg.of("from", from, QuantityKind.VOLTAGE),
                                                Arg.of("to", to, QuantityKind.VOLTAGE)))))
                .map(List::of)
                .orElse(List.of());
    }
}
