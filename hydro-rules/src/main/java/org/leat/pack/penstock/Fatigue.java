package org.leat.pack.penstock;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Pipe;
import org.leat.pack.kit.PipeSection;
import org.leat.pack.kit.Worst;
import org.leat.plant.duties.RecurringStop;

/** Years until PVC-U has seen as many blows as it stands. */
final class Fatigue {

    private static final String PATH = "/penstock/stops-per-year";

    private static final double PAST_ALL_COUNTING = 10;

    static final Rule RULE = Rule.of("penstock/fatigue", WARNING, "years of PVC-U by the blows it sees")
            .why(
                    "Every stop bends the wall a little. PVC-U counts them: at a high pressure some hundred thousand, at a low one without end."
                            + " Tough polyethylene needs no such count.")
            .formula(
                    "years = 5.05e21 · S^−4.906 / stops a year, S the hoop stress at the highest pressure of a stop, psi")
            .judged("every stop that somebody makes, at its highest pressure")
            .source("Vinson 1981; Uni-Bell Handbook of PVC Pipe; older AWWA C900 (from memory)")
            .limit("years", RATIO, 50, "", "life for which pipe is rated, ISO 1452 and ISO 4427")
            .passes("lasts", "At {peak} a stop section {section} lasts {value} years of stops.")
            .fails("tires", "At {peak} a stop section {section} lasts {value} years of stops; good is {limit}.")
            .passes("long", "At {peak} a stop section {section} lasts far longer than anybody counts.")
            .notApplicable("no-pvc-u", "No pipe of PVC-U; tough polyethylene keeps its rating under blows that recur.")
            .notApplicable("not-shut", "Nothing is stated that shuts the water.")
            .judgeAll(Fatigue::judge)
            .leastWayOut("slower", SlowerStop.TEXT, SlowerStop::of)
            .advice(
                    "deflector",
                    "Stop the wheel by a deflector that turns the jet aside: the water runs on, and the pipe feels nothing.")
            .build();

    private Fatigue() {}

    private static List<Outcome> judge(Judgement j) {
        List<PipeSection> sections = PipeSection.of(j, Pipe.PvcU.class::isInstance);
        if (sections.isEmpty()) {
            return List.of(j.at(PATH).says("no-pvc-u"));
        }
        if (RecurringStop.of(j.solved(), 0).isEmpty()) {
            return List.of(j.at(PATH).says("not-shut"));
        }
        int stops = j.at(PATH).given(PATH, j.design().penstock().stopsPerYear());
        return j.each(sections, section -> judge(j, section, stops));
    }

    private static Outcome judge(Judgement j, PipeSection section, int stops) {
        return Worst.outcome(j.each(RecurringStop.of(j.solved(), section.index()), stop -> {
            Spot during = section.spot(j).during(stop.closing());
            double peak = during.known(stop.highest());
            double years = during.known(RecurringStop.years(section.numbers(), peak, stops));
            Spot told = during.with("peak", peak, PRESSURE);
            return years > PAST_ALL_COUNTING * j.limit("years").value()
                    ? told.says("long")
                    : told.atLeast(years, j.limit("years"));
        }));
    }
}
