package org.leat.pack.site;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Penstock;
import org.leat.design.Sunlight;
import org.leat.quantity.Celsius;

/** Frost against a pipe that can stand full. */
final class Freezing {

    private static final double FREEZING = Celsius.toKelvin(0);
    private static final String EXPOSED = "/penstock/exposed";

    static final Rule RULE = Rule.of("site/freezing", WARNING, "frost against a pipe that can stand full")
            .why(
                    "Water that runs does not freeze; water that stands in an exposed pipe freezes in a night and splits valves"
                            + " and joints. A plant stops at the worst time: when leaves or ice block the screen.")
            .formula(
                    "lowest air temperature ≥ 0 °C, or the pipe below frost depth and neither in sun nor in shade, or emptied whenever it stands")
            .judged("the coldest night, the plant stopped")
            .source(COMMON_PRACTICE)
            .passes("no-frost", "No frost is met.")
            .fails("frost", "At {temperature:°C} water that stands in the exposed pipe freezes and splits it.")
            .passes("buried", "The pipe lies below frost depth.")
            .passes("drained", "The pipe is emptied whenever water would stand in it in frost.")
            .judge(Freezing::judge)
            .wayOut("bury", "The pipe laid below frost depth.", Freezing::bury)
            .wayOut(
                    "drain",
                    "A drain at the lowest point and a way for air in at the top, opened whenever the plant"
                            + " stands in frost.",
                    Change.of("/penstock/drained", true))
            .build();

    private Freezing() {}

    /** {@return whether the pipe is said to stand in sun or shade, which no pipe below frost depth does} */
    private static boolean aboveGround(Penstock penstock) {
        return penstock.sunlight() == Sunlight.OPEN || penstock.sunlight() == Sunlight.SHADED;
    }

    private static Stream<Change> bury(Judgement j, Outcome.Fail failure) {
        Change below = Change.of(EXPOSED, false);
        return Stream.of(aboveGround(j.design().penstock()) ? below.and("/penstock/sunlight", Sunlight.BURIED) : below);
    }

    private static Outcome judge(Judgement j) {
        j.at("/site").given("/site/air-temperature", j.design().site().airTemperature());
        double coldest = j.numbers().site().lowestAirTemperature();
        Penstock penstock = j.design().penstock();
        Spot spot = j.at(EXPOSED);
        if (coldest >= FREEZING) {
            return spot.says("no-frost");
        }
        if (Boolean.FALSE.equals(penstock.exposed()) && !aboveGround(penstock)) {
            return spot.says("buried");
        }
        if (Boolean.TRUE.equals(penstock.drained())) {
            return spot.says("drained");
        }
        if (!aboveGround(penstock)) {
            j.at("/penstock").given(EXPOSED, penstock.exposed());
        }
        return spot.with("temperature", coldest, TEMPERATURE).says("frost");
    }
}
