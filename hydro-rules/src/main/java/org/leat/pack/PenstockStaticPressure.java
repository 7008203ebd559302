package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.plant.cases.Shut;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.QuantityKind;

/** Standing pressure at each section's lowest point against the pipe's rating on the hottest day. */
final class PenstockStaticPressure implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/static-pressure", Level.ERROR)
            .title("standing pressure against the pipe's rating")
            .why("A pipe held above its rating creeps and bursts, often months later, with the whole stream behind it."
                    + " The rating on the pipe holds at 20 °C; a warm wall holds less.")
            .formula("p = ρ g (intake level − elevation) at every point; limit = PN · f_T at the hottest wall")
            .judged("all nozzles shut, water standing and cold, wall as hot as it gets")
            .source("EN 805: allowable operating pressure at every point")
            .source("ISO 4427-2, ISO 1452-2 ratings; ISO 13761 temperature reduction of polyethylene")
            .message("holds", "section")
            .message("too-high", "section", "wall")
            .message("thicker", "sdr", "rating")
            .message("stronger-grade", "sdr", "rating")
            .message("needed", "rating")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Shut shut = j.cases().shut();
        List<SectionNumbers> sections = j.plant().numbers().penstock().sections();
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            SectionNumbers section = sections.get(i);
            var spot = j.at(section.path() + "/pipe").during(shut.id());
            if (section.ratingHot() instanceof Amount.Known rating) {
                outcomes.add(spot.compare(
                        Comparison.atMost(shut.sections().get(i), rating.value(), QuantityKind.PRESSURE),
                        "holds",
                        "too-high",
                        Arg.of("section", section.name()),
                        Arg.of("wall", section.highestWallTemperature(), QuantityKind.TEMPERATURE)));
            } else {
                outcomes.add(Open.because(spot, section.ratingHot()));
            }
        }
        return outcomes;
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        double pressure =
                failure.comparison() == null ? 0 : failure.comparison().value();
        return StrongerPipe.ways(this, j, failure, pressure);
    }
}
