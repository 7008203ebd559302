package org.leat.pack.runner;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Runner;
import org.leat.pack.kit.DesignParts;
import org.leat.pack.kit.FieldChanges;
import org.leat.plant.cases.JetOnRunner;
import org.leat.quantity.Si;

/** Height of the wheel over tail water, also in flood. */
final class TailwaterHeight {

    private static final String USUAL = "/runner/tailwater-clearance";
    private static final String FLOOD = "/runner/flood-clearance";

    static final Rule RULE = Rule.of("runner/tailwater", WARNING, "height of the wheel over tail water")
            .why(
                    "Spent water must fall free. A wheel whose buckets touch tail water or its splash is braked by it, and in"
                            + " flood stands in it together with the alternator.")
            .formula("clear height ≥ 4 jet diameters + half a bucket")
            .judged("the thickest jet of all sets on hand; usual tail water, and flood")
            .source(COMMON_PRACTICE)
            .either("clear", "too-low", "The wheel hangs {value:mm} clear; a jet of {jet:mm} asks for {limit:mm}.")
            .judgeAll(TailwaterHeight::judge)
            .wayOut(
                    "raise",
                    "The wheel raised to {height:mm} clear, or tail water led away lower.",
                    TailwaterHeight::raised)
            .build();

    private TailwaterHeight() {}

    private static List<Outcome> judge(Judgement j) {
        Runner runner = j.at("/").given(USUAL, j.design().runner());
        JetOnRunner jet = j.solved().thickestJet();
        Spot usual = j.at(USUAL).with("jet", jet.diameter(), LENGTH);
        Spot flood = usual.at(FLOOD);
        return j.all(
                () -> usual.atLeast(usual.si(runner.tailwaterClearance()), least(j), LENGTH),
                () -> flood.atLeast(flood.si(runner.floodClearance()), least(j), LENGTH));
    }

    private static double least(Judgement j) {
        JetOnRunner jet = j.solved().thickestJet();
        return jet.leastTailwaterClearance(Si.of(DesignParts.buckets(j).length(), jet.usualBucketLength()));
    }

    private static Stream<Change> raised(Judgement j, Outcome.Fail failure) {
        double millimetres = Math.ceil(least(j) * 100 - 1e-9) * 10;
        return Stream.of(FieldChanges.told(failure.path(), "height", millimetres, "mm", Length.class));
    }
}
