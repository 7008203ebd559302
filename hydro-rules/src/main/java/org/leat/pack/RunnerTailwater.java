package org.leat.pack;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
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
import org.leat.design.Runner;
import org.leat.pack.Search.Candidate;
import org.leat.plant.solve.Jet;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.turbine.BucketProportions;
import org.leat.turbine.TailwaterClearance;

/** Height of the wheel over tail water, also in flood. */
final class RunnerTailwater implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("runner/tailwater", Level.WARNING)
            .title("height of the wheel over tail water")
            .why(
                    "Spent water must fall free. A wheel whose buckets touch tail water or its splash is braked by it, and in"
                            + " flood stands in it together with the alternator.")
            .formula("clear height ≥ 4 jet diameters + half a bucket")
            .judged("the thickest jet of all sets on hand; usual tail water, and flood")
            .source(RuleCard.COMMON_PRACTICE)
            .message("clear", "jet")
            .message("too-low", "jet")
            .message("raise", "height")
            .build();

    private static final String USUAL = "/runner/tailwater-clearance";
    private static final String FLOOD = "/runner/flood-clearance";
    private static final double USUAL_BUCKET = BucketProportions.USUAL_LENGTH.high();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Runner runner = j.design().runner();
        if (runner == null) {
            return List.of(j.at("/").notGiven(USUAL));
        }
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        return List.of(
                judge(j, j.at(USUAL), runner.tailwaterClearance()), judge(j, j.at(FLOOD), runner.floodClearance()));
    }

    private static Outcome judge(Judgement j, Spot spot, @Nullable Quantity<Length> clearance) {
        if (clearance == null) {
            return spot.notGiven(spot.path());
        }
        double jet = thickest(j);
        return spot.compare(
                Comparison.atLeast(Si.of(clearance), least(j), QuantityKind.LENGTH),
                "clear",
                "too-low",
                Arg.of("jet", jet, QuantityKind.LENGTH));
    }

    private static double least(Judgement j) {
        Runner runner = j.design().runner();
        double jet = thickest(j);
        Quantity<Length> length = runner == null || runner.buckets() == null
                ? null
                : runner.buckets().length();
        return TailwaterClearance.least(jet, Si.of(length, USUAL_BUCKET * jet));
    }

    private static double thickest(Judgement j) {
        return j.cases().running().stream()
                .flatMap(r -> r.water().jets().stream())
                .mapToDouble(Jet::diameter)
                .max()
                .orElseThrow();
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        double millimetres = Math.ceil(least(j) * 100 - 1e-9) * 10;
        Candidate raise = Candidate.of(
                "raise",
                new Edit(failure.path(), Si.quantity(millimetres, "mm", Length.class)),
                Arg.of("height", millimetres / 1000, QuantityKind.LENGTH));
        return Search.first(this, j, failure, Stream.of(raise)).stream().toList();
    }
}
