package org.leat.pack.penstock;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.TIME;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.PipeSection;
import org.leat.pack.kit.WorstStop;
import org.leat.plant.cases.Closing;
import org.leat.plant.cases.StopPeak;
import org.leat.plant.numbers.Amount;

/** Peak pressure of every stop of the water against what the pipe may see for a moment. */
final class SurgePressure {

    static final Rule RULE = Rule.of(
                    "penstock/surge-pressure", ERROR, "surge against what the pipe may see for a moment")
            .why(
                    "Water that is stopped quickly hammers: the pressure rises by the wave speed times the velocity stopped,"
                            + " on top of the standing pressure. A lever valve or a plugged nozzle is enough to split a pipe.")
            .formula("within 2L/a: p = ρ g (intake level − elevation) + ρ a ΔV (Joukowsky);"
                    + " slower: Δh = 2 L ΔV / (g t_e) (Michaud), t_e the time in which"
                    + " the valve stops the flow: most of it goes in the last of its travel; waves followed in time where"
                    + " this is no bound; where the column parts and rejoins: gas cavities along the pipe on three grids, the largest"
                    + " and their spread on top, at most the first blow + 2 ρ g (intake level − vapour head) in one pipe with a"
                    + " surge up to twice the least head; limit = rating at the hottest wall · surge allowance")
            .judged(
                    "the worst of: valve shut by hand, nozzle shut, one nozzle plugged at once, on each nozzle set on hand;"
                            + " where the water column parts, the blows of its rejoining too")
            .source("Joukowsky 1898; Michaud 1878; Wylie and Streeter, Fluid Transients in Systems, ch. 1-2")
            .source(
                    "loss of valves part open: Weisbach, in King and Brater, Handbook of Hydraulics (from memory); Perry's"
                            + " Chemical Engineers' Handbook")
            .source(
                    "column separation: Simpson and Wylie, J. Hydr. Eng. 117 (1991) 1310; Wylie, J. Fluids Eng. 106 (1984) 307"
                            + " (both from memory)")
            .source(
                    "surge allowance: polyethylene 1.5, by AWWA C901 and C906 of a United States pressure class (from memory), not of an"
                            + " ISO PN, for which the PE100+ Association reports it; PVC-U none above the rating (CP 312)")
            .passes("holds", "Section {section} sees {value} at the worst stop; its pipe may see {limit} for a moment.")
            .fails(
                    "too-high",
                    "Section {section} sees {value} when the water is stopped in {time:s} ({surge:m} of"
                            + " hammer); its pipe may see {limit} for a moment.")
            .passes(
                    "holds-rejoined",
                    "Section {section} sees {value} at most as its water column, parted by the worst stop, rejoins;"
                            + " before that {first}. Its pipe may see {limit} for a moment.")
            .fails(
                    "rejoins-too-high",
                    "Section {section} sees up to {value} as its water column, parted when the water is stopped in {time:s}, rejoins;"
                            + " before that {first}. Its pipe may see {limit} for a moment.")
            .review("damped", "Section {section}: " + WorstStop.DAMPED)
            .judgeAll(SurgePressure::judge)
            .leastWayOut("slower", SlowerStop.TEXT, SurgePressure::slower)
            .wayOut("more-nozzles", NozzlesOnHand.MORE, SurgePressure::moreNozzles)
            .wayOut("thicker", StrongerPipe.THICKER, StrongerPipe::thickerForRating)
            .wayOut("stronger-grade", StrongerPipe.STRONGER_GRADE, StrongerPipe::strongerGradeForRating)
            .lastAdvice("needed", "A pipe rated {rating:bar} at 20 °C.", SurgePressure::needed)
            .build();

    private SurgePressure() {}

    private static List<Outcome> judge(Judgement j) {
        boolean listed = !WorstStop.valveNotListed(j);
        return j.each(
                PipeSection.all(j),
                section -> listed
                        ? judge(section.spot(j), WorstStop.of(j, section.index()))
                        : section.spot(j).notGiven(j.numbers().penstock().last().path() + "/fittings"));
    }

    private static Outcome judge(Spot at, WorstStop stop) {
        Spot spot = at.during(stop.closing())
                .with("surge", stop.closing().surgeHead().or(0), LENGTH)
                .with("time", stop.closing().effectiveTime(), TIME);
        if (stop.pressure().equals(StopPeak.DAMPED)) {
            return spot.with("allowed", spot.known(stop.rating()), PRESSURE).says("damped");
        }
        Spot told = stop.peak().rejoined(stop.pressure().or(0))
                ? spot.with("first", spot.known(stop.peak().before()), PRESSURE)
                        .saying("holds-rejoined", "rejoins-too-high")
                : spot;
        return told.atMost(told.known(stop.pressure()), stop.rating(), PRESSURE);
    }

    private static Stream<Change> slower(Judgement j, Outcome.Fail failure) {
        return plugFails(j, failure) ? Stream.empty() : SlowerStop.of(j, failure);
    }

    /** Whether a plugged nozzle alone is too much for the section: then no slower valve helps. */
    private static boolean plugFails(Judgement j, Outcome.Fail failure) {
        PipeSection section = PipeSection.of(j, failure);
        Amount rating = section.numbers().surgeRatingHot();
        return j.solved().closing().stream()
                .filter(closing -> closing.cause() == Closing.Cause.NOZZLE_PLUGGED)
                .anyMatch(closing ->
                        WorstStop.of(closing, section.index(), rating).margin().orElse(0) < 0);
    }

    /** One of several nozzles plugged stops less of the water. */
    private static Stream<Change> moreNozzles(Judgement j, Outcome.Fail failure) {
        return plugFails(j, failure) ? NozzlesOnHand.more(j) : Stream.empty();
    }

    /** The rating at 20 °C that would do, by the ratio of what the pipe sees to what it may see. */
    private static Stream<Change> needed(Judgement j, Outcome.Fail failure) {
        PipeSection section = PipeSection.of(j, failure);
        Amount rating = section.numbers().rating();
        Amount seen = WorstStop.of(j, section.index()).peak().highest();
        return rating instanceof Amount.Known known && seen instanceof Amount.Known most
                ? Stream.of(Change.advice().with("rating", known.value() * most.value() / failure.limit(), PRESSURE))
                : Stream.empty();
    }
}
