package org.leat.pack.intake;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Intake;
import org.leat.plant.duties.IntakeFlow;

/** Frazil and anchor ice on the screen. */
final class Icing {

    private static final String PATH = "/intake/ice-kept-off";

    static final Rule RULE = Rule.of("intake/icing", WARNING, "ice on the screen")
            .why(
                    "On clear cold nights open, turbulent water cools a little below its freezing point, less than a common thermometer"
                            + " shows. Ice then grows on whatever it touches, and shuts a screen within an hour.")
            .formula("lowest air temperature above −6 °C, or lowest water temperature above the limit, or ice kept off")
            .judged("the coldest night")
            .source("frazil ice: an encyclopaedia's article (read)")
            .source(COMMON_PRACTICE)
            .limit("water", TEMPERATURE, 1, "°C", COMMON_PRACTICE)
            .passes("mild", "The air, at its coldest {temperature:°C}, does not cool the water so far.")
            .passes("warm-water", "The water stays at {water:°C} or more.")
            .passes("kept-off", "Ice is kept off the screen.")
            .fails("ices", "With air of {temperature:°C} over water of {water:°C} ice can shut the screen in a night.")
            .judge(Icing::judge)
            .wayOut(
                    "keep-off",
                    "An inlet in deep, still water that freezes over, a screen that is heated or can be lifted, or the plant stopped on"
                            + " clear cold nights.",
                    Change.of(PATH, true))
            .build();

    private Icing() {}

    private static Outcome judge(Judgement j) {
        j.at("/site").given("/site/air-temperature", j.design().site().airTemperature());
        double air = j.numbers().site().lowestAirTemperature();
        double water = j.numbers().site().lowestWaterTemperature();
        Spot spot = j.at(PATH).with("temperature", air, TEMPERATURE).with("water", water, TEMPERATURE);
        if (!IntakeFlow.frazilPossible(air)) {
            return spot.says("mild");
        }
        j.at("/site").given("/site/water-temperature", j.design().site().waterTemperature());
        if (water > j.limit("water").value()) {
            return spot.says("warm-water");
        }
        Intake intake = j.at("/").given("/intake", j.design().intake());
        return spot.says(spot.given(PATH, intake.iceKeptOff()) ? "kept-off" : "ices");
    }
}
