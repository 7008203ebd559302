package org.leat.pack.intake;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.SPEED;
import static org.leat.quantity.QuantityKind.VOLUME_FLOW;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.Screen;
import org.leat.pack.kit.Screens;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.duties.IntakeFlow;

/** Velocity through a screen's open area. */
final class ApproachVelocity {

    static final Rule RULE = Rule.of("intake/approach-velocity", WARNING, "velocity through the screen")
            .why("Fast water presses leaves and fish against the screen and holds them there: it blocks within hours."
                    + " Where fish live in the stream the authority may ask for far less.")
            .formula("v = Q / (open area · (1 − blocked share))")
            .judged("running on the nozzle set with most flow, the screen blocked as stated between cleanings")
            .source(COMMON_PRACTICE)
            .limit("holes", SPEED, 0.5, "m/s", COMMON_PRACTICE)
            .limit("mesh", SPEED, 0.3, "m/s", COMMON_PRACTICE)
            .limit("bars", SPEED, 0.5, "m/s", COMMON_PRACTICE)
            .passes("slow", "Water passes the screen's openings at {value}, {flow}.")
            .fails(
                    "fast",
                    "Water passes the screen's openings at {value}, {flow}: leaves stick to it. Good is" + " {limit}.")
            .judge(ApproachVelocity::judge)
            .wayOut(
                    "more-holes",
                    Screens.MORE_HOLES,
                    (j, failure) -> Screens.moreHoles(j, failure.value() / failure.limit()))
            .wayOut(
                    "more-area",
                    Screens.MORE_AREA,
                    (j, failure) -> Screens.moreArea(j, failure.value() / failure.limit()))
            .build();

    private ApproachVelocity() {}

    private static Outcome judge(Judgement j) {
        Screen screen = Screens.given(j);
        Running running = Worst.most(j.solved().running(), r -> r.water().flow());
        double flow = running.water().flow();
        return j.at(Screens.PATH)
                .during(running)
                .with("flow", flow, VOLUME_FLOW)
                .atMost(IntakeFlow.screenVelocity(screen, Screens.blocked(j, screen), flow), j.limit(kind(screen)));
    }

    private static String kind(Screen screen) {
        return screen instanceof Screen.DrilledHoles ? "holes" : screen instanceof Screen.Mesh ? "mesh" : "bars";
    }
}
