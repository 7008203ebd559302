package org.leat.pack.nozzle;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.Quantities.mm;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.RunnerKind;
import org.leat.pack.kit.DesignParts;
import org.leat.plant.duties.JetLimits;
import org.leat.plant.solved.WaterSide.Jet;

/** Bucket width over jet diameter: too narrow spills, too wide drags. */
final class JetAgainstBucket {

    static final Rule RULE = Rule.of("nozzle/jet-against-bucket", WARNING, "bucket width against the jet")
            .canFailAs(ERROR)
            .why("A jet too thick for its bucket spills over the edge and part of its power is lost; a bucket far wider"
                    + " than the jet only adds weight and windage. Under the stated share of the least width the spill"
                    + " is gross and the rule fails as an error.")
            .formula("bucket width / jet diameter, the jet's and not the bore's")
            .judged("each nozzle set on hand, its thickest and its thinnest jet")
            .source("Nechleba, Hydraulic Turbines, 1957 and textbooks: 2.8 to 4 for split double buckets (from memory)")
            .source(COMMON_PRACTICE)
            .limit("pelton-least", RATIO, 2.8, "", "textbooks (from memory)", HIGHER)
            .limit("pelton-most", RATIO, 4.0, "", "textbooks (from memory)", LOWER)
            .limit("gross-share", RATIO, 0.7, "", COMMON_PRACTICE, HIGHER)
            .passes("fits", "The bucket is {value} times as wide as the jet of {jet:mm}.")
            .fails(
                    "out-of-range",
                    "The bucket of {width:mm} is {value} times as wide as the jet of {jet:mm}; good is" + " {limit}.")
            .judgeAll(JetAgainstBucket::judge)
            .wayOut("other-width", "Buckets {width:mm} wide.", JetAgainstBucket::otherWidth)
            .build();

    private JetAgainstBucket() {}

    private static List<Outcome> judge(Judgement j) {
        String path = "/runner/buckets/width";
        double width = j.at("/nozzles/open").si(path, DesignParts.buckets(j).width());
        RunnerKind kind = j.numbers().runner().kind();
        boolean pelton = kind == RunnerKind.PELTON;
        double least = pelton ? j.limit("pelton-least").value() : JetLimits.leastBucketWidth(kind);
        double most = pelton ? j.limit("pelton-most").value() : JetLimits.greatestBucketWidth(kind);
        return j.each(j.solved().running(), running -> {
            DoubleSummaryStatistics jets =
                    running.water().jets().stream().mapToDouble(Jet::diameter).summaryStatistics();
            double thickest = width / jets.getMax();
            double worst = thickest < least ? thickest : width / jets.getMin();
            return j.at(path)
                    .during(running)
                    .as(worst < least * j.limit("gross-share").value() ? ERROR : WARNING)
                    .with("jet", width / worst, LENGTH)
                    .with("width", width, LENGTH)
                    .within(worst, least, most, RATIO);
        });
    }

    private static Stream<Change> otherWidth(Judgement j, Outcome.Fail failure) {
        double jet = j.at(failure.path()).si(DesignParts.buckets(j).width()) / failure.value();
        Comparison range = failure.compared();
        double width = Math.round(jet * (range.low() + range.high()) / 2 * 1000) / 1000.0;
        return Stream.of(Change.of(failure.path(), mm(Math.rint(width * 1000))).with("width", width, LENGTH));
    }
}
