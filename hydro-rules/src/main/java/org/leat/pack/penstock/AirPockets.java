package org.leat.pack.penstock;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.SPEED;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Section;
import org.leat.law.Answer;
import org.leat.pack.kit.PipeSizes;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.SectionNumbers;

/** High points along the run: vented, or flushed by the water. */
final class AirPockets {

    static final Rule RULE = Rule.of("penstock/air-pockets", WARNING, "air at high points")
            .why(
                    "Air that gathers behind a high point narrows the pipe like a half-shut valve and comes through the nozzle"
                            + " in gulps. Fast water carries it down; slow water needs an air valve.")
            .formula("V ≥ 1.1 (0.56 √sin θ + 0.61) √(g D) in the pipe that falls behind the high point, θ its fall")
            .judged(
                    "running with the most water the stream has, on the nozzle set with the slowest water; a section is taken to slope"
                            + " evenly between its ends")
            .source("Escarameia, Air problems in pipelines, HR Wallingford SR 649, 2005 (from memory)")
            .passes("no-high-point", "The pipe falls all the way, as stated.")
            .passes("vented", "The high point at the end of section {section} has an air valve.")
            .passes(
                    "flushed",
                    "Water carries the air behind the high point of section {section} down section {below}"
                            + " at {value}, with {set} too.")
            .fails(
                    "gathers",
                    "On {set} water runs down section {below} at {value}: air stays at the high point of section"
                            + " {section}. Good is {limit}.")
            .judgeAll(AirPockets::judge)
            .wayOut("add-vent", "An air valve at the high point of section {section}.", AirPockets::vent)
            .build();

    private AirPockets() {}

    private static List<Outcome> judge(Judgement j) {
        List<Running> all = j.solved().running();
        List<Section> sections = j.design().penstock().sections();
        List<Integer> high = IntStream.range(0, sections.size() - 1)
                .filter(i -> !levelled(sections, i) || (rises(j, i) && !rises(j, i + 1)))
                .boxed()
                .toList();
        return high.isEmpty() ? List.of(j.at("/penstock").says("no-high-point")) : j.each(high, i -> judge(j, all, i));
    }

    /** Whether it is told how high the joint below a section lies. */
    private static boolean levelled(List<Section> sections, int above) {
        return sections.get(above).toElevation() != null
                || sections.get(above + 1).fromElevation() != null;
    }

    private static boolean rises(Judgement j, int section) {
        SectionNumbers s = j.numbers().penstock().sections().get(section);
        return s.toElevation() > s.fromElevation();
    }

    private static Outcome judge(Judgement j, List<Running> all, int index) {
        List<Section> sections = j.design().penstock().sections();
        Section section = sections.get(index);
        String path = PipeSizes.path(j.design(), index);
        if (!levelled(sections, index)) {
            return j.at(path).notGiven(path + "/to-elevation");
        }
        SectionNumbers below = j.numbers().penstock().sections().get(index + 1);
        Running slowest = Worst.least(all, running -> velocity(running, index + 1));
        Spot spot = j.at(path).during(slowest).with("section", section.name());
        if (Boolean.TRUE.equals(section.ventedHighPoint())) {
            return spot.says("vented");
        }
        Answer least = below.airFlushingVelocity();
        double velocity = velocity(slowest, index + 1);
        if (!(least instanceof Answer.Value enough && velocity >= enough.value())) {
            spot.given(path + "/vented-high-point", section.ventedHighPoint());
        }
        return spot.saying("flushed", "gathers")
                .with("below", below.name())
                .with(Arg.of("set", slowest.nozzles().name()))
                .atLeast(velocity, spot.known(least), SPEED);
    }

    private static double velocity(Running running, int section) {
        return running.water().sections().get(section).velocity();
    }

    private static Stream<Change> vent(Judgement j, Outcome.Fail failure) {
        Section section = j.design().penstock().sections().get(PipeSizes.of(j, failure));
        return Stream.of(Change.of(failure.path() + "/vented-high-point", true).with("section", section.name()));
    }
}
