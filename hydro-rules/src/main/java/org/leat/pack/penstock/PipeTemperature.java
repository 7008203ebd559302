package org.leat.pack.penstock;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Pipe;
import org.leat.design.Sunlight;
import org.leat.pack.kit.PipeSection;

/** The hottest the pipe's wall gets against what its material is made for. */
final class PipeTemperature {

    static final Rule RULE = Rule.of("penstock/temperature", ERROR, "hottest wall against the material's limit")
            .why("A black pipe that stands in the sun with the water shut gets far warmer than the air. Above the"
                    + " temperature its standard covers, no rating holds and it swells until it bursts.")
            .formula("highest wall temperature ≤ the material's limit")
            .judged("water standing on the hottest day")
            .source("polyethylene: EN 12201:2024 covers to 50 °C (from memory); PVC-U: ISO 1452-2 annex A, to 45 °C")
            .source("hose and other pipe: as marked or stated in the design")
            .limit("polyethylene", TEMPERATURE, 50, "°C", "EN 12201:2024 (from memory)", LOWER)
            .limit("pvc-u", TEMPERATURE, 45, "°C", "ISO 1452-2 annex A", LOWER)
            .passes(
                    "cool-enough",
                    "The wall of section {section} reaches {value} standing in the heat; {limit} is allowed.")
            .fails(
                    "too-hot",
                    "The wall of section {section} reaches {value} standing in the heat; its material is"
                            + " made for {limit}.")
            .notApplicable("steel", "Steel stands any weather.")
            .judgeAll(PipeTemperature::judge)
            .wayOut(
                    "cover",
                    "The pipe buried or covered: its wall then stays at {temperature:°C}.",
                    PipeTemperature::cover)
            .build();

    private PipeTemperature() {}

    private static List<Outcome> judge(Judgement j) {
        return j.each(PipeSection.all(j), section -> judge(j, section));
    }

    private static Outcome judge(Judgement j, PipeSection section) {
        String path = section.pipePath();
        if (section.pipe() instanceof Pipe.Steel) {
            return j.at(path).says("steel");
        }
        double hottest = hottestWall(j);
        Spot spot = section.spot(j);
        if (section.pipe() instanceof Pipe.Polyethylene) {
            return spot.atMost(hottest, j.limit("polyethylene"));
        }
        if (section.pipe() instanceof Pipe.PvcU) {
            return spot.atMost(hottest, j.limit("pvc-u"));
        }
        double limit = section.pipe() instanceof Pipe.Hose hose
                ? spot.si(path + "/rated-temperature", hose.ratedTemperature())
                : spot.si(path + "/highest-temperature", ((Pipe.OtherPipe) section.pipe()).highestTemperature());
        return spot.atMost(hottest, limit, TEMPERATURE);
    }

    private static double hottestWall(Judgement j) {
        return j.numbers().penstock().sections().get(0).highestWallTemperature();
    }

    private static Stream<Change> cover(Judgement j, Outcome.Fail failure) {
        Change cover = Change.of("/penstock/sunlight", Sunlight.BURIED)
                .telling(covered -> List.of(Arg.of("temperature", hottestWall(covered), TEMPERATURE)));
        return Stream.of(
                j.design().penstock().highestWallTemperature() == null
                        ? cover
                        : cover.and("/penstock/highest-wall-temperature", null));
    }
}
