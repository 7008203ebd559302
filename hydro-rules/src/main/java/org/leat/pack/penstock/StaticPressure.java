package org.leat.pack.penstock;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.PipeSection;
import org.leat.plant.cases.Shut;

/** Standing pressure at each section's lowest point against the pipe's rating on the hottest day. */
final class StaticPressure {

    static final Rule RULE = Rule.of("penstock/static-pressure", ERROR, "standing pressure against the pipe's rating")
            .why("A pipe held above its rating creeps and bursts, often months later, with the whole stream behind it."
                    + " The rating on the pipe holds at 20 °C; a warm wall holds less.")
            .formula("p = ρ g (intake level − elevation) at every point; limit = PN · f_T at the hottest wall")
            .judged("all nozzles shut, water standing and cold, wall as hot as it gets")
            .source("EN 805: allowable operating pressure at every point")
            .source("ISO 4427-2, ISO 1452-2 ratings; ISO 13761 temperature reduction of polyethylene")
            .passes("holds", "Section {section} stands at {value} with the water shut; its pipe holds {limit}.")
            .fails(
                    "too-high",
                    "Section {section} stands at {value} with the water shut; its pipe holds {limit} with a"
                            + " wall at {wall:°C}.")
            .judgeAll(StaticPressure::judge)
            .wayOut("thicker", StrongerPipe.THICKER, StrongerPipe::thickerForRating)
            .wayOut("stronger-grade", StrongerPipe.STRONGER_GRADE, StrongerPipe::strongerGradeForRating)
            .lastAdvice("needed", "A pipe that holds {rating:bar} at its hottest.", StaticPressure::needed)
            .build();

    private StaticPressure() {}

    private static List<Outcome> judge(Judgement j) {
        Shut shut = j.shut();
        return j.each(
                PipeSection.all(j),
                section -> section.spot(j)
                        .during(shut)
                        .with("wall", section.numbers().highestWallTemperature(), TEMPERATURE)
                        .atMost(
                                shut.sections().get(section.index()),
                                section.numbers().ratingHot(),
                                PRESSURE));
    }

    private static Stream<Change> needed(Judgement j, Outcome.Fail failure) {
        return Stream.of(Change.advice().with("rating", failure.value(), PRESSURE));
    }
}
