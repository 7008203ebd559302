package org.leat.pack.penstock;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.quantity.Pressure;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Pipe;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.PipeSection;
import org.leat.pack.kit.Worst;
import org.leat.plant.duties.RecurringStop;
import org.leat.quantity.Si;

/** How far the pressure in PVC-U comes and goes with every stop of the water. */
final class PenstockPressureRange {

    private static final double[] RATINGS = {6, 8, 10, 12.5, 16, 20, 25};

    static final Rule RULE = Rule.of("penstock/pressure-range", ERROR, "pressure in PVC-U that comes and goes")
            .why(
                    "PVC-U tires: a pressure that it holds for fifty years cracks it after some hundred thousand blows. Where the water is"
                            + " stopped every day, the range between highest and lowest pressure counts, not the highest alone. Later guidance"
                            + " (a UK water industry note of 1999) calls this limit extremely conservative; penstock/fatigue counts the blows.")
            .formula(
                    "highest − lowest pressure ≤ share · PN · f_T, and highest ≤ PN · f_T; a vacuum as the lowest where the column parts")
            .judged(
                    "every stop that somebody makes: a valve shut by hand, a nozzle shut, the intake's valve; the hottest wall")
            .source("BS CP 312, as a paper on surge and fatigue reports it (read)")
            .limit("share", RATIO, 0.5, "", "BS CP 312", LOWER)
            .either(
                    "within",
                    "swings",
                    "The pressure in section {section} comes and goes by {value} with a stop; {limit} is allowed.")
            .passes("below-rating", "Section {section} sees {value} in a stop that recurs; its rating is {limit}.")
            .fails(
                    "above-rating",
                    "Section {section} sees {value} in a stop that recurs; its rating is {limit}, and no surge goes above it.")
            .notApplicable("no-pvc-u", "No pipe of PVC-U.")
            .notApplicable("not-shut", "Nothing is stated that shuts the water.")
            .judgeAll(PenstockPressureRange::judge)
            .leastWayOut("slower", SlowerStop.TEXT, SlowerStop::of)
            .wayOut("stronger", "PVC-U of {rating:bar}.", PenstockPressureRange::stronger)
            .build();

    private PenstockPressureRange() {}

    private static List<Outcome> judge(Judgement j) {
        List<PipeSection> sections = PipeSection.of(j, Pipe.PvcU.class::isInstance);
        if (sections.isEmpty()) {
            return List.of(j.at("/penstock").says("no-pvc-u"));
        }
        return RecurringStop.of(j.solved(), 0).isEmpty()
                ? List.of(j.at("/penstock").says("not-shut"))
                : j.each(sections, section -> judge(j, section));
    }

    private static Outcome judge(Judgement j, PipeSection section) {
        Spot spot = section.spot(j);
        double rating = spot.known(section.numbers().ratingHot());
        List<Outcome> all = new ArrayList<>();
        for (RecurringStop stop : RecurringStop.of(j.solved(), section.index())) {
            Spot during = spot.during(stop.closing());
            all.addAll(j.all(
                    () -> during.saying("within", "swings")
                            .atMost(during.known(stop.range()), j.limit("share").value() * rating, PRESSURE),
                    () -> during.saying("below-rating", "above-rating")
                            .atMost(during.known(stop.highest()), rating, PRESSURE)));
        }
        return Worst.outcome(all);
    }

    private static Stream<Change> stronger(Judgement j, Outcome.Fail failure) {
        Pipe.PvcU pipe = (Pipe.PvcU) PipeSection.of(j, failure).pipe();
        double now = Si.of(pipe.pressureRating(), 0);
        return DoubleStream.of(RATINGS)
                .filter(bar -> bar * 1e5 > now)
                .mapToObj(bar -> FieldChanges.rated(failure.path() + "/pressure-rating", bar, "bar", Pressure.class))
                .map(change -> pipe.wall() == null ? change : change.and(failure.path() + "/wall", null));
    }
}
