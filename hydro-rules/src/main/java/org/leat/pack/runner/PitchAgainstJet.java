package org.leat.pack.runner;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.FieldChanges;
import org.leat.plant.cases.JetOnRunner;

/** Pitch diameter over jet diameter: a wheel too small for its jet. */
final class PitchAgainstJet {

    private static final String PATH = "/runner/pitch-diameter";

    static final Rule RULE = Rule.of("runner/pitch-against-jet", WARNING, "pitch diameter against the jet")
            .why("On a small wheel a thick jet meets the buckets at a slant for most of its way and is not turned well;"
                    + " there is no room for enough buckets either.")
            .formula("pitch diameter / jet diameter")
            .judged("each nozzle set on hand, its thickest jet")
            .source("Nechleba, Hydraulic Turbines, 1957 and textbooks: 9 to 12 usual, 6 to 8 with loss (from memory)")
            .source(COMMON_PRACTICE)
            .limit("pelton-least", RATIO, 7.5, "", "textbooks, between 6 (loss) and 9 (from memory)")
            .limit("turgo-least", RATIO, 4, "", "textbooks (from memory)")
            .passes("wide-enough", "The pitch diameter is {value} jet diameters ({jet:mm}).")
            .fails("too-small", "The pitch diameter is {value} jet diameters ({jet:mm}); good is {limit}.")
            .judgeAll(PitchAgainstJet::judge)
            .wayOut("larger-wheel", "A pitch diameter of {diameter:mm}.", PitchAgainstJet::larger)
            .build();

    private PitchAgainstJet() {}

    private static List<Outcome> judge(Judgement j) {
        j.at("/nozzles/open").given(PATH, j.design().runner());
        return j.each(j.solved().running(), running -> {
            JetOnRunner jet = JetOnRunner.of(j.numbers(), running);
            return j.at(PATH)
                    .during(running)
                    .with("jet", jet.diameter(), LENGTH)
                    .atLeast(jet.pitchRatio(), least(j, jet), RATIO);
        });
    }

    private static double least(Judgement j, JetOnRunner jet) {
        return switch (jet.runner().kind()) {
            case PELTON -> j.limit("pelton-least").value();
            case TURGO -> j.limit("turgo-least").value();
            case CUPS, FLAT -> jet.leastUsualPitchRatio();
        };
    }

    private static Stream<Change> larger(Judgement j, Outcome.Fail failure) {
        double jet = j.numbers().runner().pitchDiameter() / failure.value();
        double millimetres = Math.ceil(jet * failure.limit() * 1000 / 5) * 5;
        return Stream.of(FieldChanges.told(PATH, "diameter", millimetres, "mm", Length.class));
    }
}
