package org.leat.pack.penstock;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.quantity.Quantities.seconds;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.SPEED;
import static org.leat.quantity.QuantityKind.TIME;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Kind;
import org.leat.check.NamedLimit.Safer;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Cases;
import org.leat.plant.numbers.SectionNumbers;

/** Water that fills the empty pipe against the air that must leave it. */
final class RefillRate {

    private static final String PATH = "/penstock/filling-time";

    static final Rule RULE = Rule.of("penstock/filling", WARNING, "velocity at which the empty pipe is filled")
            .canFailAs(ERROR)
            .why(
                    "Water that rushes into an empty pipe drives the air before it, and where the air is through, or shut in, the water stops"
                            + " dead: a blow as of a valve slammed. Fill slowly, a nozzle open for the air, and shut it last.")
            .formula(
                    "volume of the pipe / (filling time · least bore area); where that is too fast, standing pressure + ρ a v of the"
                            + " water that meets a shut nozzle ≤ what the section may see for a moment (an error)")
            .judged("the pipe empty, filled from the intake")
            .source("Joukowsky 1898: Δp = ρ a v")
            .source("AWWA M51 and C605: 0.3 m/s (from memory)")
            .limit("most", SPEED, 0.3, "m/s", "AWWA M51 and C605 (from memory)", Safer.LOWER)
            .passes("slow", "The water fills the pipe at {value}.")
            .fails("fast", "The water fills the pipe at {value}; good is {limit}.")
            .passes(
                    "blow-stood",
                    "Filled that fast the water strikes a shut nozzle at {speed}: section {section} sees up to {value}.")
            .fails(
                    "bursts",
                    "Filled that fast the water strikes a shut nozzle at {speed}: section {section} sees up to {value} and may see"
                            + " {limit}.")
            .judgeAll(RefillRate::judge)
            .wayOut(
                    "slower",
                    "Filled in no less than {time:min}: its valve a crack open, or by a small side pipe.",
                    RefillRate::slower)
            .build();

    private RefillRate() {}

    private static List<Outcome> judge(Judgement j) {
        double time = j.at("/penstock").si(PATH, j.design().penstock().fillingTime());
        double velocity = volumeOverLeastArea(j) / time;
        Outcome rate = j.at(PATH).saying("slow", "fast").atMost(velocity, j.limit("most"));
        if (rate.kind() != Kind.FAIL) {
            return List.of(rate);
        }
        List<Outcome> all = new ArrayList<>(List.of(rate));
        all.addAll(j.all(() -> blow(j, velocity)));
        return all;
    }

    /** The water column meets the shut end as fast as it fills the narrowest part of the pipe. */
    private static Outcome blow(Judgement j, double velocity) {
        Cases cases = j.solved();
        List<SectionNumbers> sections = j.numbers().penstock().sections();
        Spot spot = j.at(PATH).as(ERROR).during("filling").saying("blow-stood", "bursts");
        double blow = 0;
        for (SectionNumbers section : sections) {
            blow = Math.max(blow, j.numbers().water().density() * spot.known(section.waveSpeed()) * velocity);
        }
        double seen = blow;
        return Worst.outcome(j.eachOf(
                sections.size(),
                i -> spot.with("section", sections.get(i).name())
                        .with("speed", velocity, SPEED)
                        .atMost(
                                cases.shut().sections().get(i) + seen,
                                sections.get(i).surgeRatingHot(),
                                PRESSURE)));
    }

    private static double volumeOverLeastArea(Judgement j) {
        List<SectionNumbers> sections = j.numbers().penstock().sections();
        double volume = 0;
        double least = sections.get(0).area();
        for (SectionNumbers section : sections) {
            volume += section.area() * section.length();
            least = Math.min(least, section.area());
        }
        return volume / least;
    }

    private static Stream<Change> slower(Judgement j, Outcome.Fail failure) {
        double time = 60 * Math.ceil(volumeOverLeastArea(j) / j.limit("most").value() / 60);
        return Stream.of(Change.of(PATH, seconds(time)).with("time", time, TIME));
    }
}
