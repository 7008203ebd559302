package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.plant.numbers.StreamLevel;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** What the open nozzles leave in the bed in the driest time. */
final class SiteKeptFlow implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("site/kept-flow", Level.WARNING)
            .title("flow left in the bed")
            .why("Fish, people downstream and the law need water in the bed. Nozzles that pass more than the stream can"
                    + " spare take it all, unless the intake is built to let the kept flow by first. How much must stay"
                    + " is for the local authority to say.")
            .formula("stream flow − flow of the open nozzles with the pipe full, never below zero ≥ kept flow")
            .judged("the nozzles open as built, at the least flow of the stream")
            .source("local water authority")
            .source(RuleCard.COMMON_PRACTICE)
            .message("ask-the-authority")
            .message("enough", "flow")
            .message("too-little", "flow")
            .message("smaller-nozzle", "bore")
            .message("kept-first")
            .build();

    private static final String PATH = "/site/stream/kept-in-stream";

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        List<StreamLevel> levels = j.plant().numbers().site().stream();
        var stream = j.design().site().stream();
        if (stream == null || levels.isEmpty()) {
            return List.of(Open.noStream(j, "/site"));
        }
        if (stream.keptInStream() == null) {
            return List.of(j.at("/site/stream").review("ask-the-authority"));
        }
        double taken = j.cases().running().get(0).water().fullPipeFlow();
        StreamLevel driest = Worst.least(levels, StreamLevel::flow);
        return List.of(j.at(PATH)
                .compare(
                        Comparison.atLeast(
                                Math.max(0, driest.flow() - taken),
                                Si.of(stream.keptInStream()),
                                QuantityKind.VOLUME_FLOW),
                        "enough",
                        "too-little",
                        Arg.of("flow", driest.flow(), QuantityKind.VOLUME_FLOW)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        Search.least(this, j, failure, NozzlesOnHand.smaller(j, "smaller-nozzle"))
                .ifPresent(ways::add);
        ways.add(j.advice("kept-first"));
        return ways;
    }
}
