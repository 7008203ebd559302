package org.leat.pack.penstock;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.SPEED;
import static org.leat.quantity.QuantityKind.VOLUME_FLOW;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.PipeSection;
import org.leat.pack.kit.PipeSizes;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;

/** Water no faster than the pipe and its joints stand for long. */
final class Velocity {

    static final Rule RULE = Rule.of("penstock/velocity", WARNING, "water velocity in the penstock")
            .why("Fast water wears bends and valves, loses head with its square and makes every stop a harder blow.")
            .formula("v = Q / (π d² / 4), flow Q over the area of the bore d")
            .judged("running with the most water the stream has, on the nozzle set with the fastest water")
            .source(COMMON_PRACTICE)
            .limit("velocity", SPEED, 3, "m/s", COMMON_PRACTICE)
            .fails("too-fast", "Water runs at {value} in section {section} at {flow}; good is {limit}.")
            .passes("slow-enough", "Water runs at {value} in section {section} at {flow}.")
            .judgeAll(Velocity::judge)
            .wayOut("larger-pipe", PipeSizes.OTHER, Velocity::larger)
            .leastWayOut("smaller-nozzle", "Nozzles of {bore:mm} in every open position.", Velocity::smallerNozzle)
            .build();

    private Velocity() {}

    private static List<Outcome> judge(Judgement j) {
        List<Running> all = j.solved().running();
        return j.each(PipeSection.all(j), section -> {
            Running running = Worst.most(all, r -> velocity(r, section));
            return section.spot(j)
                    .during(running)
                    .with("flow", running.water().flow(), VOLUME_FLOW)
                    .atMost(velocity(running, section), j.limit("velocity"));
        });
    }

    private static double velocity(Running running, PipeSection section) {
        return running.water().sections().get(section.index()).velocity();
    }

    private static Stream<Change> larger(Judgement j, Outcome.Fail failure) {
        return PipeSizes.larger(j, PipeSection.of(j, failure).index());
    }

    private static Stream<Change> smallerNozzle(Judgement j, Outcome.Fail failure) {
        boolean asBuilt = failure.during().equals(j.solved().running().get(0).id());
        return asBuilt ? NozzlesOnHand.smaller(j, failure) : Stream.empty();
    }
}
