package org.leat.pack.site;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.VOLUME_FLOW;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.StreamFlows;
import org.leat.pack.kit.Worst;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;
import org.leat.quantity.Si;

/** What the open nozzles leave in the bed in the driest time. */
final class KeptFlow {

    static final Rule RULE = Rule.of("site/kept-flow", WARNING, "flow left in the bed")
            .why("Fish, people downstream and the law need water in the bed. Nozzles that pass more than the stream can"
                    + " spare take it all, unless the intake is built to let the kept flow by first. How much must stay"
                    + " is for the local authority to say.")
            .formula("stream flow − flow of the open nozzles with the pipe full, never below zero ≥ kept flow")
            .judged("the nozzles open as built, at the least flow of the stream")
            .source("local water authority")
            .source(COMMON_PRACTICE)
            .review(
                    "ask-the-authority",
                    "How much must stay in the bed is not told. Ask the water authority before taking any.")
            .passes("enough", "In the driest time, {flow}, the bed keeps {value}; {limit} is asked for.")
            .fails(
                    "too-little",
                    "In the driest time, {flow}, the open nozzles leave {value} in the bed; {limit} is asked" + " for.")
            .passes(
                    "enough-once",
                    "At the one flow that is told, {flow}, the bed keeps {value}; {limit} is asked for. How little the stream"
                            + " brings in a dry time is not told.")
            .fails(
                    "too-little-once",
                    "At the one flow that is told, {flow}, the open nozzles leave {value} in the bed; {limit} is asked for. In"
                            + " a dry time it is less.")
            .judge(KeptFlow::judge)
            .leastWayOut("smaller-nozzle", "A {bore:mm} nozzle in every open position.", NozzlesOnHand::smaller)
            .advice("kept-first", "An intake whose sill lets the kept flow by before the pipe gets any.")
            .build();

    private KeptFlow() {}

    private static Outcome judge(Judgement j) {
        double taken = j.solved().running().get(0).water().fullPipeFlow();
        List<StreamLevel> year = StreamFlows.of(j, "/site");
        var stream = j.at("/site").given("/site/stream", j.design().site().stream());
        if (stream.keptInStream() == null) {
            return j.at("/site/stream").says("ask-the-authority");
        }
        double driest = Worst.least(year, StreamLevel::flow).flow();
        boolean once = year.stream().allMatch(level -> level.kind() == StreamLevel.Kind.CONSTANT);
        return j.at("/site/stream/kept-in-stream")
                .saying(once ? "enough-once" : "enough", once ? "too-little-once" : "too-little")
                .with("flow", driest, VOLUME_FLOW)
                .atLeast(Math.max(0, driest - taken), Si.of(stream.keptInStream()), VOLUME_FLOW);
    }
}
