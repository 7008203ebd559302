package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.pack.Search.Candidate;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.QuantityText;
import org.leat.quantity.Si;

/** The nozzle sets on hand against what each flow of the stream could give. */
final class NozzleSetCoversStream implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("nozzle/set-covers-stream", Level.WARNING)
            .title("nozzle sets on hand against the flows of the year")
            .why(
                    "A nozzle too wide for a dry month empties the pipe and loses the head, and power falls with the cube of the"
                            + " flow. A nozzle costs little: have one for every season.")
            .formula(
                    "power of the best set on hand / power of a nozzle cut for that flow; full pipe: as solved; else the"
                            + " nozzle passes what there is, P = ρ Q V²/2 with V = Q / jet area; no nozzle wider than the widest set on hand")
            .judged("each flow of the stream, less what is kept; the worst is told")
            .source("continuity: the nozzle passes what there is")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("share", QuantityKind.RATIO, 90, "%", RuleCard.COMMON_PRACTICE)
            .message("covers", "flow", "set")
            .message("misses", "flow", "set")
            .message("add-bores", "bores")
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
        if (j.plant().numbers().site().stream().isEmpty()) {
            return List.of(Open.noStream(j, "/nozzles"));
        }
        SeasonMatch worst = SeasonMatch.worst(j);
        Spot spot = j.at("/nozzles/available");
        if (worst == null) {
            return List.of(spot.notGiven("/site/stream/flow"));
        }
        return List.of(spot.compare(
                Comparison.atLeast(worst.share(), j.limit("share")),
                "covers",
                "misses",
                Arg.of("flow", worst.flow(), QuantityKind.VOLUME_FLOW),
                Arg.of("set", worst.set().name())));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        if (!j.design().nozzles().sets().isEmpty()) {
            return List.of();
        }
        List<Quantity<Length>> bores = new ArrayList<>(j.design().nozzles().available());
        StringJoiner added = new StringJoiner(", ");
        for (SeasonMatch season : SeasonMatch.all(j)) {
            Quantity<Length> bore = Si.quantity(Math.rint(season.bestBore() * 2000) / 2, "mm", Length.class);
            if (season.share() < j.limit("share").value() && !bores.contains(bore)) {
                bores.add(bore);
                added.add(QuantityText.print(bore));
            }
        }
        Candidate add =
                Candidate.of("add-bores", new Edit("/nozzles/available", bores), Arg.of("bores", added.toString()));
        return Search.first(this, j, failure, Stream.of(add)).stream().toList();
    }
}
