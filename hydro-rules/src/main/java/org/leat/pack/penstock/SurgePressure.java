package org.leat.pack.penstock;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.Quantities.seconds;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.TIME;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.PipeSizes;
import org.leat.pack.kit.WorstStop;
import org.leat.plant.cases.Closing;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.numbers.ValveNumbers;

/** Peak pressure of every stop of the water against what the pipe may see for a moment. */
final class SurgePressure {

    private static final double[] TIMES = {1, 2, 3, 5, 8, 10, 15, 20, 30, 45, 60, 90, 120, 180, 300, 600};

    static final Rule RULE = Rule.of(
                    "penstock/surge-pressure", ERROR, "surge against what the pipe may see for a moment")
            .why(
                    "Water that is stopped quickly hammers: the pressure rises by the wave speed times the velocity stopped,"
                            + " on top of the standing pressure. A lever valve or a plugged nozzle is enough to split a pipe.")
            .formula("within 2L/a: p = ρ g (intake level − elevation) + ρ a ΔV (Joukowsky);"
                    + " slower: Δh = 2 L ΔV / (g t_e) (Michaud), t_e the time in which"
                    + " the valve stops the flow: most of it goes in the last of its travel; waves followed in time where"
                    + " this is no bound; limit = rating at the hottest wall · surge allowance")
            .judged(
                    "the worst of: valve shut by hand, nozzle shut, one nozzle plugged at once, on each nozzle set on hand;"
                            + " of a plugged nozzle the first blow, not what follows where the water column parts")
            .source("Joukowsky 1898; Michaud 1878; Wylie and Streeter, Fluid Transients in Systems, ch. 1-2")
            .source(
                    "loss of valves part open: Weisbach, in King and Brater, Handbook of Hydraulics (from memory); Perry's"
                            + " Chemical Engineers' Handbook")
            .source("surge allowance: PE100+ Association technical guidance (PE), AWWA C906 and C900")
            .passes("holds", "Section {section} sees {value} at the worst stop; its pipe may see {limit} for a moment.")
            .fails(
                    "too-high",
                    "Section {section} sees {value} when the water is stopped in {time:s} ({surge:m} of"
                            + " hammer); its pipe may see {limit} for a moment.")
            .judgeAll(SurgePressure::judge)
            .leastWayOut(
                    "slower",
                    "Shut no faster than in {time:s}: a valve of many turns, not a lever.",
                    SurgePressure::slower)
            .wayOut("thicker", StrongerPipe.THICKER, StrongerPipe::thickerForRating)
            .wayOut("stronger-grade", StrongerPipe.STRONGER_GRADE, StrongerPipe::strongerGradeForRating)
            .lastAdvice("needed", "A pipe rated {rating:bar} at 20 °C.", SurgePressure::needed)
            .build();

    private SurgePressure() {}

    private static List<Outcome> judge(Judgement j) {
        List<SectionNumbers> sections = j.numbers().penstock().sections();
        boolean listed = !WorstStop.valveNotListed(j);
        return j.eachOf(sections.size(), i -> {
            Spot spot = j.at(PipeSizes.path(j.design(), i) + "/pipe");
            return listed
                    ? judge(spot.with("section", sections.get(i).name()), WorstStop.of(j, i))
                    : spot.notGiven(j.numbers().penstock().last().path() + "/fittings");
        });
    }

    private static Outcome judge(Spot at, WorstStop stop) {
        Spot spot = at.during(stop.closing())
                .with("surge", stop.closing().surgeHead().or(0), LENGTH)
                .with("time", stop.closing().effectiveTime(), TIME);
        return spot.atMost(spot.known(stop.pressure()), spot.known(stop.rating()), PRESSURE);
    }

    private static Stream<Change> slower(Judgement j, Outcome.Fail failure) {
        String path = timePath(j, failure);
        return path == null || plugFails(j, PipeSizes.of(j, failure))
                ? Stream.empty()
                : DoubleStream.of(TIMES)
                        .mapToObj(time -> Change.of(path, seconds(time)).with("time", time, TIME));
    }

    /** The field that says how fast the water is stopped; null for a plugged nozzle, which nobody times. */
    private static @Nullable String timePath(Judgement j, Outcome.Fail failure) {
        return j.solved().closing().stream()
                .filter(closing -> closing.id().equals(failure.during()) && WorstStop.timed(closing))
                .flatMap(closing -> Stream.ofNullable(closing.valve()))
                .findFirst()
                .map(ValveNumbers::path)
                .orElse(null);
    }

    /** Whether a plugged nozzle alone is too much for the section: then no slower valve helps. */
    private static boolean plugFails(Judgement j, int section) {
        Amount rating = j.numbers().penstock().sections().get(section).surgeRatingHot();
        return j.solved().closing().stream()
                .filter(closing -> closing.cause() == Closing.Cause.NOZZLE_PLUGGED)
                .anyMatch(closing -> new WorstStop(closing, closing.sections().get(section), rating)
                                .margin()
                                .orElse(0)
                        < 0);
    }

    /** The rating at 20 °C that would do, by the ratio of what the pipe sees to what it may see. */
    private static Stream<Change> needed(Judgement j, Outcome.Fail failure) {
        Amount rating =
                j.numbers().penstock().sections().get(PipeSizes.of(j, failure)).rating();
        return rating instanceof Amount.Known known
                ? Stream.of(Change.advice().with("rating", known.value() * failure.value() / failure.limit(), PRESSURE))
                : Stream.empty();
    }
}
