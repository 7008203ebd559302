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
import org.leat.pack.kit.PipeSection;
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
        List<PipeSection> sections = PipeSection.all(j);
        List<Joint> high = IntStream.range(0, sections.size() - 1)
                .mapToObj(i -> new Joint(sections.get(i), sections.get(i + 1)))
                .filter(joint -> !joint.levelled() || joint.high())
                .toList();
        return j.eachOr(j.at("/penstock").says("no-high-point"), high, joint -> judge(j, all, joint));
    }

    /** Where a section ends and the next begins. */
    private record Joint(PipeSection above, PipeSection below) {

        /** Whether it is told how high it lies. */
        boolean levelled() {
            return above.stated().toElevation() != null || below.stated().fromElevation() != null;
        }

        boolean high() {
            return rises(above.numbers()) && !rises(below.numbers());
        }

        private static boolean rises(SectionNumbers section) {
            return section.toElevation() > section.fromElevation();
        }
    }

    private static Outcome judge(Judgement j, List<Running> all, Joint joint) {
        String path = joint.above().path();
        if (!joint.levelled()) {
            return j.at(path).notGiven(path + "/to-elevation");
        }
        int below = joint.below().index();
        Running slowest = Worst.least(all, running -> velocity(running, below));
        Section section = joint.above().stated();
        Spot spot = j.at(path).during(slowest).with("section", section.name());
        if (Boolean.TRUE.equals(section.ventedHighPoint())) {
            return spot.says("vented");
        }
        Answer least = joint.below().numbers().airFlushingVelocity();
        double velocity = velocity(slowest, below);
        if (!(least instanceof Answer.Value enough && velocity >= enough.value())) {
            spot.given(path + "/vented-high-point", section.ventedHighPoint());
        }
        return spot.saying("flushed", "gathers")
                .with("below", joint.below().stated().name())
                .with(Arg.of("set", slowest.nozzles().name()))
                .atLeast(velocity, spot.known(least), SPEED);
    }

    private static double velocity(Running running, int section) {
        return running.water().sections().get(section).velocity();
    }

    private static Stream<Change> vent(Judgement j, Outcome.Fail failure) {
        String name = PipeSection.of(j, failure).stated().name();
        return Stream.of(Change.of(failure.path() + "/vented-high-point", true).with("section", name));
    }
}
