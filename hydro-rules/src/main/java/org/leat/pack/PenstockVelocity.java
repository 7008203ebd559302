package org.leat.pack;

import static org.leat.quantity.QuantityKind.SPEED;
import static org.leat.quantity.QuantityKind.VOLUME_FLOW;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.plant.cases.Running;
import org.leat.plant.solve.SectionFlow;

/** {@code penstock/velocity}: water no faster than the pipe and its joints stand for long. */
final class PenstockVelocity implements Rule {

    private static final RuleCard CARD = RuleCard.of("penstock/velocity", Level.WARNING)
            .title("water velocity in the penstock")
            .why("Fast water wears bends and valves, loses head with its square and makes every stop a harder blow.")
            .formula("v = Q / (π d² / 4), flow Q over the area of the bore d")
            .judged("running with the most water the stream has, on the nozzle set with the fastest water")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("velocity", SPEED, 3, "m/s", RuleCard.COMMON_PRACTICE)
            .message("too-fast", "section", "flow")
            .message("slow-enough", "section", "flow")
            .message("larger-pipe", "section", "diameter")
            .message("smaller-nozzle", "bore")
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
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < j.design().penstock().sections().size(); i++) {
            int section = i;
            Running running = Worst.most(
                    j.cases().running(), r -> r.water().sections().get(section).velocity());
            SectionFlow flow = running.water().sections().get(section);
            outcomes.add(j.at(PipeSizes.path(j.design(), section) + "/pipe")
                    .during(running)
                    .compare(
                            Comparison.atMost(flow.velocity(), j.limit("velocity")),
                            "slow-enough",
                            "too-fast",
                            Arg.of("section", flow.section()),
                            Arg.of("flow", running.water().flow(), VOLUME_FLOW)));
        }
        return outcomes;
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        for (int i = 0; i < j.design().penstock().sections().size(); i++) {
            if (failure.path().equals(PipeSizes.path(j.design(), i) + "/pipe")) {
                Search.first(this, j, failure, PipeSizes.larger(j, i, "larger-pipe"))
                        .ifPresent(ways::add);
            }
        }
        if (failure.during().equals(j.cases().running().get(0).id())) {
            Search.least(this, j, failure, NozzlesOnHand.smaller(j, "smaller-nozzle"))
                    .ifPresent(ways::add);
        }
        return ways;
    }
}
