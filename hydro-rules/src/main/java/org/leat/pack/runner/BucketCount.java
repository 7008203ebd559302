package org.leat.pack.runner;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.RunnerKind;
import org.leat.pack.kit.DesignParts;
import org.leat.plant.cases.JetOnRunner;

/** Number of buckets against the rule for split double buckets. */
final class BucketCount {

    private static final String PATH = "/runner/buckets/count";

    static final Rule RULE = Rule.of("runner/bucket-count", WARNING, "number of buckets")
            .why(
                    "Between too few buckets water slips through without work; too many stand in each other's way and in the"
                            + " jet's.")
            .formula("0.8 to 1.3 times D/(2 d) + 15, D pitch and d jet diameter")
            .judged("split double buckets, with the thickest jet of all sets on hand")
            .source("Taygun 1946, quoted by Nechleba, Hydraulic Turbines, 1957 (from memory)")
            .source(COMMON_PRACTICE)
            .limit("fewest", RATIO, 0.8, "", COMMON_PRACTICE)
            .limit("most", RATIO, 1.3, "", COMMON_PRACTICE)
            .passes("usual", "{value} buckets suit the jet of {jet:mm}.")
            .fails("unusual", "{value} buckets for a jet of {jet:mm}; usual are {limit}.")
            .notApplicable("other-kind", "No rule is known for this kind of bucket.")
            .judge(BucketCount::judge)
            .wayOut("other-count", "{count} buckets.", BucketCount::usual)
            .build();

    private BucketCount() {}

    private static Outcome judge(Judgement j) {
        int count = j.at("/").given(PATH, DesignParts.buckets(j).count());
        JetOnRunner jet = j.solved().thickestJet();
        Spot spot = j.at(PATH);
        if (jet.runner().kind() != RunnerKind.PELTON) {
            return spot.says("other-kind");
        }
        double fewest = Math.ceil(jet.usualBuckets() * j.limit("fewest").value() - 1e-9);
        double most = Math.floor(jet.usualBuckets() * j.limit("most").value() + 1e-9);
        return spot.with("jet", jet.diameter(), LENGTH).within(count, fewest, most, RATIO);
    }

    private static Stream<Change> usual(Judgement j, Outcome.Fail failure) {
        int count = j.solved().thickestJet().usualWholeBuckets();
        return Stream.of(Change.of(PATH, count).with("count", count));
    }
}
