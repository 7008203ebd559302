package org.leat.pack.site;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.VOLUME_FLOW;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.StreamFlows;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.plant.numbers.StreamLevel;

/** What the open nozzles pass against what the stream brings, at each flow of the year. */
final class FlowAvailable {

    static final Rule RULE = Rule.of("site/flow-available", WARNING, "flow of the open nozzles against the stream")
            .why(
                    "Where the nozzles pass more than the stream brings, the pipe does not stay full: the level falls in it,"
                            + " the head is lost and the nozzle spits air.")
            .formula("flow of the nozzles with the pipe full ≤ stream flow − flow kept in the stream")
            .judged("the nozzles open as built, at the flow reached for the share of the year that is asked for")
            .source(COMMON_PRACTICE)
            .passes("enough", "The open nozzles pass {value}; {limit} is there for them.")
            .fails(
                    "too-little",
                    "The open nozzles pass {value} where {limit} is there for them (after {kept} for the"
                            + " bed): the pipe does not stay full and draws air.")
            .judgeAll(FlowAvailable::judge)
            .leastWayOut("smaller-nozzle", "A {bore:mm} nozzle in every open position.", NozzlesOnHand::smaller)
            .build();

    private FlowAvailable() {}

    private static List<Outcome> judge(Judgement j) {
        double asked = j.solved().running().get(0).water().fullPipeFlow();
        SiteNumbers site = j.numbers().site();
        List<StreamLevel> year = StreamFlows.of(j, "/site");
        List<StreamLevel> asOften = year.stream()
                .filter(level -> level.kind() != StreamLevel.Kind.EXCEEDED || level.at() <= site.fullPipeShare() + 1e-9)
                .toList();
        return j.each(
                asOften.isEmpty() ? year.subList(0, 1) : asOften,
                level -> j.at("/nozzles/open")
                        .during(name(level))
                        .with("share", level.at(), RATIO)
                        .with("kept", site.keptInStream(), VOLUME_FLOW)
                        .atMost(asked, level.available(), VOLUME_FLOW));
    }

    private static String name(StreamLevel level) {
        return switch (level.kind()) {
            case CONSTANT -> "stream";
            case MONTH -> "month " + Math.round(level.at());
            case EXCEEDED -> "stream exceeded " + Math.round(level.at() * 100) + " %";
        };
    }
}
