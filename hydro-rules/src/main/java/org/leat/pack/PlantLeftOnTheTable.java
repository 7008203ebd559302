package org.leat.pack;

import java.util.List;
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
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Power to be had with the nozzles on hand. */
final class PlantLeftOnTheTable implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("plant/left-on-the-table", Level.NOTE)
            .title("power to be had with the nozzles on hand")
            .why("A nozzle in a drawer is the cheapest power there is, as long as the stream has the water.")
            .formula("most battery power of the sets on hand over that of the set as built, less one ≤ limit")
            .judged("running on each nozzle set on hand, with the most water the stream has")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("worth-it", QuantityKind.RATIO, 5, "%", RuleCard.COMMON_PRACTICE)
            .message("best-fitted", "power")
            .message("better-on-hand", "power", "nozzles", "other")
            .message("fit", "nozzles")
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
        if (j.cases().running().size() == 1) {
            return List.of(j.at("/nozzles/open").notGiven("/nozzles/available"));
        }
        Running built = j.cases().running().get(0);
        double power = Math.max(built.operatingPoint().batteryPower(), 1);
        Running best = best(j);
        double more = best.operatingPoint().batteryPower() / power - 1;
        Spot spot = j.at("/nozzles/open").during(built.id());
        Comparison comparison = Comparison.atMost(more, j.limit("worth-it"));
        Arg told = Arg.of("power", power, QuantityKind.POWER);
        return List.of(
                comparison.holds()
                        ? spot.compare(comparison, "best-fitted", "better-on-hand", told)
                        : spot.compare(
                                comparison,
                                "best-fitted",
                                "better-on-hand",
                                told,
                                Arg.of("nozzles", best.nozzles().name()),
                                Arg.of("other", best.operatingPoint().batteryPower(), QuantityKind.POWER)));
    }

    private static Running best(Judgement j) {
        return Worst.most(j.cases().running(), r -> r.operatingPoint().batteryPower());
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Running best = best(j);
        List<Quantity<Length>> open = best.nozzles().bores().stream()
                .map(bore -> Si.quantity(Math.rint(bore * 1e5) / 100, "mm", Length.class))
                .toList();
        return Search.first(
                        this,
                        j,
                        failure,
                        Stream.of(Candidate.of(
                                "fit",
                                new Edit("/nozzles/open", open),
                                Arg.of("nozzles", best.nozzles().name()))))
                .map(List::of)
                .orElse(List.of());
    }
}
