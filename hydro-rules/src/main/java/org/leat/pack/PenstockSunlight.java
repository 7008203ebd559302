package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Pipe;
import org.leat.design.Section;
import org.leat.design.Sunlight;

/** A pipe in the open whose material the sun eats. */
final class PenstockSunlight implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/sunlight", Level.WARNING)
            .title("pipe in the open sun")
            .why("Sunlight makes PVC-U brittle within a few years: it then shatters at a knock or a surge. Black"
                    + " polyethylene is made for it; of a hose only its maker knows.")
            .formula("material stabilised against ultraviolet light, or covered")
            .judged("the pipe as it lies")
            .source(RuleCard.COMMON_PRACTICE)
            .source("ISO 4427-2: carbon black in polyethylene pipe")
            .message("covered")
            .message("stands-it", "section")
            .message("brittle", "section")
            .message("ask-the-maker", "section")
            .message("cover")
            .message("shade")
            .build();

    private static final String PATH = "/penstock/sunlight";

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Sunlight sunlight = j.design().penstock().sunlight();
        if (sunlight == null) {
            return List.of(j.at("/penstock").notGiven(PATH));
        }
        List<Section> sections = j.design().penstock().sections();
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            Spot spot = j.at(PipeSizes.path(j.design(), i) + "/pipe");
            outcomes.add(sunlight == Sunlight.OPEN ? inTheOpen(spot, sections.get(i)) : spot.pass("covered"));
        }
        return outcomes;
    }

    private static Outcome inTheOpen(Spot spot, Section section) {
        Arg name = Arg.of("section", section.name());
        if (section.pipe() instanceof Pipe.PvcU) {
            return spot.fail("brittle", name);
        }
        boolean asks = section.pipe() instanceof Pipe.Hose || section.pipe() instanceof Pipe.OtherPipe;
        return asks ? spot.review("ask-the-maker", name) : spot.pass("stands-it", name);
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return List.of(
                j.wayOut("cover", List.of(new Edit(PATH, Sunlight.BURIED))),
                j.wayOut("shade", List.of(new Edit(PATH, Sunlight.SHADED))));
    }
}
