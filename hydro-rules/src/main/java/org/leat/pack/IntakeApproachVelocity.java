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
import org.leat.check.WayOut;
import org.leat.design.Screen;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;

/** Velocity through a screen's open area. */
final class IntakeApproachVelocity implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("intake/approach-velocity", Level.WARNING)
            .title("velocity through the screen")
            .why("Fast water presses leaves and fish against the screen and holds them there: it blocks within hours."
                    + " Where fish live in the stream the authority may ask for far less.")
            .formula("v = Q / (open area · (1 − blocked share))")
            .judged("running on the nozzle set with most flow, the screen blocked as stated between cleanings")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("holes", QuantityKind.SPEED, 0.5, "m/s", RuleCard.COMMON_PRACTICE)
            .limit("mesh", QuantityKind.SPEED, 0.3, "m/s", RuleCard.COMMON_PRACTICE)
            .limit("bars", QuantityKind.SPEED, 0.5, "m/s", RuleCard.COMMON_PRACTICE)
            .message("slow", "flow")
            .message("fast", "flow")
            .message("more-holes", "holes")
            .message("more-area", "area")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Screen screen = Screens.of(j);
        if (screen == null) {
            return List.of(j.at("/intake").notGiven(Screens.PATH));
        }
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Double blocked = Screens.blockedShare(screen);
        if (blocked == null) {
            return List.of(j.at(Screens.PATH).notGiven(Screens.PATH + "/blocked-share"));
        }
        Running running = Worst.most(j.cases().running(), r -> r.water().flow());
        double flow = running.water().flow();
        double velocity = flow / (Screens.openArea(screen) * (1 - blocked));
        return List.of(j.at(Screens.PATH)
                .during(running)
                .compare(
                        Comparison.atMost(velocity, j.limit(kind(screen))),
                        "slow",
                        "fast",
                        Arg.of("flow", flow, QuantityKind.VOLUME_FLOW)));
    }

    private static String kind(Screen screen) {
        return screen instanceof Screen.DrilledHoles ? "holes" : screen instanceof Screen.Mesh ? "mesh" : "bars";
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Screen screen = Screens.of(j);
        Comparison comparison = failure.comparison();
        if (screen == null || comparison == null) {
            return List.of();
        }
        double times = comparison.value() / comparison.high();
        return Search.first(
                        this, j, failure, Stream.of(1.0, 1.1, 1.3).map(more -> Screens.larger(screen, times * more)))
                .stream()
                .toList();
    }
}
