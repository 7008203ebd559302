package org.leat.pack;

import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.SPEED;
import static org.leat.quantity.QuantityKind.VOLUME_FLOW;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.plant.Running;
import org.leat.plant.SectionFlow;

/** {@code penstock/velocity}: water no faster than the pipe and its joints stand for long. */
final class PenstockVelocity implements Rule {

    private static final RuleCard CARD = RuleCard.of("penstock/velocity", Level.WARNING)
            .title("water velocity in the penstock")
            .why("Fast water wears bends and valves, loses head with its square and makes every stop a harder blow.")
            .formula("v = Q / (π d² / 4), flow Q over the area of the bore d")
            .judged("running on each nozzle set with the most water the stream has")
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
        List<Outcome> outcomes = new ArrayList<>();
        for (Running running : j.cases().running()) {
            List<SectionFlow> sections = running.water().sections();
            for (int i = 0; i < sections.size(); i++) {
                outcomes.add(j.at(PipeSizes.path(j.design(), i) + "/pipe")
                        .during(running)
                        .compare(
                                Comparison.atMost(sections.get(i).velocity(), j.limit("velocity")),
                                "slow-enough",
                                "too-fast",
                                Arg.of("section", sections.get(i).section()),
                                Arg.of("flow", running.water().flow(), VOLUME_FLOW)));
            }
        }
        return outcomes;
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        for (int i = 0; i < j.design().penstock().sections().size(); i++) {
            if (failure.path().equals(PipeSizes.path(j.design(), i) + "/pipe")) {
                String name = j.design().penstock().sections().get(i).name();
                PipeSizes.larger(j.design(), i).stream()
                        .filter(size -> !fails(j.with(size.edits()), failure))
                        .limit(1)
                        .forEach(size -> ways.add(j.wayOut(
                                "larger-pipe",
                                size.edits(),
                                Arg.of("section", name),
                                Arg.of("diameter", size.outsideDiameter(), LENGTH))));
            }
        }
        if (failure.during().equals(j.cases().running().get(0).id())) {
            NozzleSizes.smaller(j.design()).stream()
                    .filter(bore -> !fails(j.with(bore.edits()), failure))
                    .limit(1)
                    .forEach(bore ->
                            ways.add(j.wayOut("smaller-nozzle", bore.edits(), Arg.of("bore", bore.bore(), LENGTH))));
        }
        return ways;
    }

    private boolean fails(Judgement j, Outcome failure) {
        return judge(j).stream()
                .anyMatch(o -> o.kind() == Kind.FAIL && o.identity().equals(failure.identity()));
    }
}
