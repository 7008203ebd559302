package org.leat.pack.penstock;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.Quantities.seconds;
import static org.leat.quantity.QuantityKind.SPEED;
import static org.leat.quantity.QuantityKind.TIME;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.plant.numbers.SectionNumbers;

/** Water that fills the empty pipe against the air that must leave it. */
final class RefillRate {

    private static final String PATH = "/penstock/filling-time";

    static final Rule RULE = Rule.of("penstock/filling", WARNING, "velocity at which the empty pipe is filled")
            .why(
                    "Water that rushes into an empty pipe drives the air before it, and where the air is through, or shut in, the water stops"
                            + " dead: a blow as of a valve slammed. Fill slowly, a nozzle open for the air, and shut it last.")
            .formula("volume of the pipe / (filling time · least bore area)")
            .judged("the pipe empty, filled from the intake")
            .source("AWWA M51 and C605: 0.3 m/s (from memory)")
            .limit("most", SPEED, 0.3, "m/s", "AWWA M51 and C605 (from memory)")
            .passes("slow", "The water fills the pipe at {value}.")
            .fails("fast", "The water fills the pipe at {value}; good is {limit}.")
            .judge(RefillRate::judge)
            .wayOut(
                    "slower",
                    "Filled in no less than {time:min}: its valve a crack open, or by a small side pipe.",
                    RefillRate::slower)
            .build();

    private RefillRate() {}

    private static Outcome judge(Judgement j) {
        double time = j.at("/penstock").si(PATH, j.design().penstock().fillingTime());
        return j.at(PATH).atMost(volumeOverLeastArea(j) / time, j.limit("most"));
    }

    private static double volumeOverLeastArea(Judgement j) {
        List<SectionNumbers> sections = j.numbers().penstock().sections();
        double volume = 0;
        double least = Double.POSITIVE_INFINITY;
        for (SectionNumbers section : sections) {
            volume += section.area() * section.length();
            least = Math.min(least, section.area());
        }
        return volume / least;
    }

    private static Stream<Change> slower(Judgement j, Outcome.Fail failure) {
        double time = 60 * Math.ceil(volumeOverLeastArea(j) / failure.limit() / 60);
        return Stream.of(Change.of(PATH, seconds(time)).with("time", time, TIME));
    }
}
