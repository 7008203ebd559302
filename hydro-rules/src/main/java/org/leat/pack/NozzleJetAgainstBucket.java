package org.leat.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.measure.quantity.Length;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Buckets;
import org.leat.design.Runner;
import org.leat.design.RunnerKind;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.plant.solve.Jet;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.turbine.RunnerType;

/** Bucket width over jet diameter: too narrow spills, too wide drags. */
final class NozzleJetAgainstBucket implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("nozzle/jet-against-bucket", Level.WARNING)
            .canFailAs(Level.ERROR)
            .title("bucket width against the jet")
            .why("A jet too thick for its bucket spills over the edge and part of its power is lost; a bucket far wider"
                    + " than the jet only adds weight and windage. Under the stated share of the least width the spill"
                    + " is gross and the rule fails as an error.")
            .formula("bucket width / jet diameter, the jet's and not the bore's")
            .judged("each nozzle set on hand, its thickest and its thinnest jet")
            .source("Nechleba, Hydraulic Turbines, 1957 and textbooks: 2.8 to 4 for split double buckets (from memory)")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("pelton-least", QuantityKind.RATIO, 2.8, "", "textbooks (from memory)")
            .limit("pelton-most", QuantityKind.RATIO, 4.0, "", "textbooks (from memory)")
            .limit("gross-share", QuantityKind.RATIO, 0.7, "", RuleCard.COMMON_PRACTICE)
            .message("fits", "jet", "width")
            .message("out-of-range", "jet", "width")
            .message("other-width", "width")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Runner runner = j.design().runner();
        Buckets buckets = runner == null ? null : runner.buckets();
        if (runner == null || buckets == null || buckets.width() == null) {
            return List.of(j.at("/nozzles/open").notGiven("/runner/buckets/width"));
        }
        double width = Si.of(buckets.width());
        double[] range = range(j, runner.kind());
        List<Outcome> outcomes = new ArrayList<>();
        for (Running running : j.cases().running()) {
            List<Jet> jets = running.water().jets().stream()
                    .sorted(Comparator.comparingDouble(Jet::diameter))
                    .toList();
            double thickest = width / jets.get(jets.size() - 1).diameter();
            double thinnest = width / jets.get(0).diameter();
            double worst = thickest < range[0] ? thickest : thinnest;
            Level level = worst < range[0] * j.limit("gross-share").value() ? Level.ERROR : Level.WARNING;
            outcomes.add(j.at("/runner/buckets/width")
                    .during(running.id())
                    .compare(
                            level,
                            Comparison.within(worst, range[0], range[1], QuantityKind.RATIO),
                            "fits",
                            "out-of-range",
                            Arg.of("jet", width / worst, QuantityKind.LENGTH),
                            Arg.of("width", width, QuantityKind.LENGTH)));
        }
        return outcomes.isEmpty() ? Open.unsolved(j) : outcomes;
    }

    private static double[] range(Judgement j, RunnerKind kind) {
        if (kind == RunnerKind.PELTON) {
            return new double[] {
                j.limit("pelton-least").value(), j.limit("pelton-most").value()
            };
        }
        RunnerType.Span span = RunnerType.valueOf(kind.name()).bucketWidthRatio();
        return new double[] {span.low(), span.high()};
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Runner runner = j.design().runner();
        Comparison comparison = failure.comparison();
        if (runner == null
                || comparison == null
                || runner.buckets() == null
                || runner.buckets().width() == null) {
            return List.of();
        }
        double jet = Si.of(runner.buckets().width()) / comparison.value();
        double middle = Math.round(jet * (comparison.low() + comparison.high()) / 2 * 1000) / 1000.0;
        List<WayOut> ways = new ArrayList<>();
        Search.first(
                        this,
                        j,
                        failure,
                        java.util.stream.Stream.of(Candidate.of(
                                "other-width",
                                new Edit(
                                        "/runner/buckets/width",
                                        Si.quantity(Math.rint(middle * 1000), "mm", Length.class)),
                                Arg.of("width", middle, QuantityKind.LENGTH))))
                .ifPresent(ways::add);
        return ways;
    }
}
