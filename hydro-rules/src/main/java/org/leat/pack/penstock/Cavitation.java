package org.leat.pack.penstock;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.PRESSURE;

import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.plant.numbers.WaterNumbers;

/** Lowest absolute pressure while running against the pressure at which the water boils. */
final class Cavitation {

    static final Rule RULE = Rule.of("penstock/cavitation", ERROR, "absolute pressure against vapour pressure")
            .why("Water under deep suction boils cold. The column breaks, and when the parts meet again they hit harder"
                    + " than any valve.")
            .formula("p + p_air ≥ p_vapour + margin, the margin for air dissolved in the water")
            .judged("running on each nozzle set, at the point of lowest pressure, water at its warmest")
            .source("vapour pressure: IAPWS SR1-86(1992), Wagner and Pruss 1993")
            .source(COMMON_PRACTICE)
            .limit("margin", LENGTH, 2, "m", COMMON_PRACTICE, HIGHER)
            .passes("liquid", "The least absolute pressure, at {place}, is {value}; {limit} keeps the water whole.")
            .fails(
                    "boils",
                    "At {place} the absolute pressure falls to {value}: the water boils or gives off its"
                            + " air. Good is {limit}.")
            .judge(Cavitation::judge)
            .advice("lower", "The pipe laid {lift:m} lower there.", Cavitation::lower)
            .build();

    private Cavitation() {}

    private static Outcome judge(Judgement j) {
        LowestPoint lowest = LowestPoint.of(j);
        SiteNumbers site = j.numbers().site();
        double vapour = WaterNumbers.at(site.highestWaterTemperature()).vapourPressure();
        double margin = j.limit("margin").value() * j.numbers().water().specificWeight();
        double absolute = site.atmosphericPressure() + lowest.point().pressure();
        return lowest.spot(j).atLeast(absolute, vapour + margin, PRESSURE);
    }

    private static Stream<Change> lower(Judgement j, Outcome.Fail failure) {
        double lift = (failure.limit() - failure.value()) / j.numbers().water().specificWeight();
        return Stream.of(Change.advice().with("lift", Math.ceil(lift * 10) / 10, LENGTH));
    }
}
