package org.leat.pack.penstock;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;

import java.util.List;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.Pipe;
import org.leat.design.Sunlight;
import org.leat.pack.kit.PipeSection;

/** A pipe in the open whose material the sun eats. */
final class PipeSunlight {

    private static final String PATH = "/penstock/sunlight";

    static final Rule RULE = Rule.of("penstock/sunlight", WARNING, "pipe in the open sun")
            .why("Sunlight makes PVC-U brittle within a few years: it then shatters at a knock or a surge. Black"
                    + " polyethylene is made for it; of a hose only its maker knows.")
            .formula("material stabilised against ultraviolet light, or covered")
            .judged("the pipe as it lies")
            .source(COMMON_PRACTICE)
            .source("ISO 4427-2: carbon black in polyethylene pipe")
            .passes("covered", "No sun reaches the pipe.")
            .passes("stands-it", "Section {section} is of a material made for the open.")
            .fails("brittle", "Section {section} is of PVC-U and lies in the open sun, which makes it brittle.")
            .review(
                    "ask-the-maker",
                    "Section {section} lies in the open sun: ask its maker whether it is made for that.")
            .judgeAll(PipeSunlight::judge)
            .wayOut("cover", "The pipe buried.", Change.of(PATH, Sunlight.BURIED))
            .wayOut(
                    "shade",
                    "The pipe wrapped, painted white or boxed in, so that no sun reaches it.",
                    Change.of(PATH, Sunlight.SHADED))
            .build();

    private PipeSunlight() {}

    private static List<Outcome> judge(Judgement j) {
        Sunlight sunlight = j.at("/penstock").given(PATH, j.design().penstock().sunlight());
        return j.each(
                PipeSection.all(j),
                section -> sunlight == Sunlight.OPEN
                        ? section.spot(j).says(inTheOpen(section.pipe()))
                        : j.at(section.pipePath()).says("covered"));
    }

    private static String inTheOpen(Pipe pipe) {
        boolean asks = pipe instanceof Pipe.Hose || pipe instanceof Pipe.OtherPipe;
        return pipe instanceof Pipe.PvcU ? "brittle" : asks ? "ask-the-maker" : "stands-it";
    }
}
