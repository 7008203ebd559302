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
import org.leat.plant.numbers.SiteNumbers;
import org.leat.plant.numbers.StreamLevel;
import org.leat.quantity.QuantityKind;

/** What the open nozzles pass against what the stream brings, at each flow of the year. */
final class SiteFlowAvailable implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("site/flow-available", Level.WARNING)
            .title("flow of the open nozzles against the stream")
            .why(
                    "Where the nozzles pass more than the stream brings, the pipe does not stay full: the level falls in it,"
                            + " the head is lost and the nozzle spits air.")
            .formula("flow of the nozzles with the pipe full ≤ stream flow − flow kept in the stream")
            .judged("the nozzles open as built, at the flow reached for the share of the year that is asked for")
            .source(RuleCard.COMMON_PRACTICE)
            .message("enough", "share")
            .message("too-little", "share", "kept")
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
        SiteNumbers site = j.plant().numbers().site();
        if (site.stream().isEmpty()) {
            return List.of(Open.noStream(j, "/site"));
        }
        double asked = j.cases().running().get(0).water().fullPipeFlow();
        List<Outcome> outcomes = new ArrayList<>();
        for (StreamLevel level : judged(site)) {
            outcomes.add(j.at("/nozzles/open")
                    .during(name(level))
                    .compare(
                            Comparison.atMost(asked, level.available(), QuantityKind.VOLUME_FLOW),
                            "enough",
                            "too-little",
                            Arg.of("share", level.at(), QuantityKind.RATIO),
                            Arg.of("kept", site.keptInStream(), QuantityKind.VOLUME_FLOW)));
        }
        return outcomes;
    }

    /** The flows at which the pipe must stay full: of a curve, those reached for no more than the share asked for. */
    private static List<StreamLevel> judged(SiteNumbers site) {
        List<StreamLevel> levels = site.stream().stream()
                .filter(level -> level.kind() != StreamLevel.Kind.EXCEEDED || level.at() <= site.fullPipeShare() + 1e-9)
                .toList();
        return levels.isEmpty() ? site.stream().subList(0, 1) : levels;
    }

    private static String name(StreamLevel level) {
        return switch (level.kind()) {
            case CONSTANT -> "stream";
            case MONTH -> "month " + Math.round(level.at());
            case EXCEEDED -> "stream exceeded " + Math.round(level.at() * 100) + " %";
        };
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Search.least(this, j, failure, NozzlesOnHand.smaller(j, "smaller-nozzle"))
                .map(List::of)
                .orElse(List.of());
    }
}
