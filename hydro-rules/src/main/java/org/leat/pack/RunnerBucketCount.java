package org.leat.pack;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Runner;
import org.leat.design.RunnerKind;
import org.leat.pack.Search.Candidate;
import org.leat.plant.solve.Jet;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.turbine.TaygunBucketCount;

/** Number of buckets against the rule for split double buckets. */
final class RunnerBucketCount implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("runner/bucket-count", Level.WARNING)
            .title("number of buckets")
            .why(
                    "Between too few buckets water slips through without work; too many stand in each other's way and in the"
                            + " jet's.")
            .formula("0.8 to 1.3 times D/(2 d) + 15, D pitch and d jet diameter")
            .judged("split double buckets, with the thickest jet of all sets on hand")
            .source("Taygun 1946, quoted by Nechleba, Hydraulic Turbines, 1957 (from memory)")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("fewest", QuantityKind.RATIO, 0.8, "", RuleCard.COMMON_PRACTICE)
            .limit("most", QuantityKind.RATIO, 1.3, "", RuleCard.COMMON_PRACTICE)
            .message("usual", "jet")
            .message("unusual", "jet")
            .message("other-kind")
            .message("other-count", "count")
            .build();

    private static final String PATH = "/runner/buckets/count";

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Runner runner = j.design().runner();
        if (runner == null || runner.buckets() == null || runner.buckets().count() == null) {
            return List.of(j.at("/").notGiven(PATH));
        }
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        if (runner.kind() != RunnerKind.PELTON) {
            return List.of(j.at(PATH).notApplicable("other-kind"));
        }
        double jet = thickest(j);
        double usual = TaygunBucketCount.of(Si.of(runner.pitchDiameter()), jet);
        return List.of(j.at(PATH)
                .compare(
                        Comparison.within(
                                runner.buckets().count(),
                                Math.ceil(usual * j.limit("fewest").value() - 1e-9),
                                Math.floor(usual * j.limit("most").value() + 1e-9),
                                QuantityKind.RATIO),
                        "usual",
                        "unusual",
                        Arg.of("jet", jet, QuantityKind.LENGTH)));
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
        Runner runner = j.design().runner();
        if (runner == null) {
            return List.of();
        }
        int count = TaygunBucketCount.whole(Si.of(runner.pitchDiameter()), thickest(j));
        Candidate other = Candidate.of("other-count", new Edit(PATH, count), Arg.of("count", (long) count));
        return Search.first(this, j, failure, Stream.of(other)).stream().toList();
    }
}
