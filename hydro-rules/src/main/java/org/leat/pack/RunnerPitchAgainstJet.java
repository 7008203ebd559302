package org.leat.pack;

import java.util.ArrayList;
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
import org.leat.design.Runner;
import org.leat.design.RunnerKind;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.plant.solve.Jet;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.turbine.RunnerType;

/** Pitch diameter over jet diameter: a wheel too small for its jet. */
final class RunnerPitchAgainstJet implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("runner/pitch-against-jet", Level.WARNING)
            .title("pitch diameter against the jet")
            .why("On a small wheel a thick jet meets the buckets at a slant for most of its way and is not turned well;"
                    + " there is no room for enough buckets either.")
            .formula("pitch diameter / jet diameter")
            .judged("each nozzle set on hand, its thickest jet")
            .source("Nechleba, Hydraulic Turbines, 1957 and textbooks: 9 to 12 usual, 6 to 8 with loss (from memory)")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("pelton-least", QuantityKind.RATIO, 7.5, "", "textbooks, between 6 (loss) and 9 (from memory)")
            .limit("turgo-least", QuantityKind.RATIO, 4, "", "textbooks (from memory)")
            .message("wide-enough", "jet")
            .message("too-small", "jet")
            .message("larger-wheel", "diameter")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Runner runner = j.design().runner();
        if (runner == null) {
            return List.of(j.at("/nozzles/open").notGiven("/runner/pitch-diameter"));
        }
        double pitch = Si.of(runner.pitchDiameter());
        double least = least(j, runner.kind());
        List<Outcome> outcomes = new ArrayList<>();
        for (Running running : j.cases().running()) {
            double jet = running.water().jets().stream()
                    .mapToDouble(Jet::diameter)
                    .max()
                    .orElseThrow();
            outcomes.add(j.at("/runner/pitch-diameter")
                    .during(running.id())
                    .compare(
                            Comparison.atLeast(pitch / jet, least, QuantityKind.RATIO),
                            "wide-enough",
                            "too-small",
                            Arg.of("jet", jet, QuantityKind.LENGTH)));
        }
        return outcomes.isEmpty() ? Open.unsolved(j) : outcomes;
    }

    private static double least(Judgement j, RunnerKind kind) {
        return switch (kind) {
            case PELTON -> j.limit("pelton-least").value();
            case TURGO -> j.limit("turgo-least").value();
            case CUPS, FLAT -> RunnerType.valueOf(kind.name()).pitchToJetRatio().low();
        };
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Runner runner = j.design().runner();
        Comparison comparison = failure.comparison();
        if (runner == null || comparison == null) {
            return List.of();
        }
        double jet = Si.of(runner.pitchDiameter()) / comparison.value();
        double millimetres = Math.ceil(jet * comparison.low() * 1000 / 5) * 5;
        return Search.first(
                        this,
                        j,
                        failure,
                        java.util.stream.Stream.of(Candidate.of(
                                "larger-wheel",
                                new Edit("/runner/pitch-diameter", Si.quantity(millimetres, "mm", Length.class)),
                                Arg.of("diameter", millimetres / 1000, QuantityKind.LENGTH))))
                .map(List::of)
                .orElse(List.of());
    }
}
