package org.leat.pack;

import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.hydraulics.WaterProperties;
import org.leat.law.Gravity;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.quantity.QuantityKind;

/** Lowest absolute pressure while running against the pressure at which the water boils. */
final class PenstockCavitation implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/cavitation", Level.ERROR)
            .title("absolute pressure against vapour pressure")
            .why("Water under deep suction boils cold. The column breaks, and when the parts meet again they hit harder"
                    + " than any valve.")
            .formula("p + p_air ≥ p_vapour + margin, the margin for air dissolved in the water")
            .judged("running on each nozzle set, at the point of lowest pressure, water at its warmest")
            .source("vapour pressure: Wagner and Pruss 2002")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("margin", QuantityKind.LENGTH, 2, "m", RuleCard.COMMON_PRACTICE)
            .message("liquid", "place")
            .message("boils", "place")
            .message("lower", "lift")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        String first = PipeSizes.path(j.design(), 0);
        if (j.design().penstock().sections().get(0).fromElevation() == null) {
            return List.of(j.at(first).notGiven(first + "/from-elevation"));
        }
        LowestPoint lowest = LowestPoint.of(j);
        PlantNumbers numbers = j.plant().numbers();
        double warmest = numbers.site().highestWaterTemperature() - 273.15;
        double vapour = WaterProperties.vapourPressure(
                Math.min(WaterProperties.HOTTEST, Math.max(WaterProperties.COLDEST, warmest)));
        double least = vapour + j.limit("margin").value() * weight(numbers);
        double absolute = numbers.site().atmosphericPressure() + lowest.point().pressure();
        return List.of(j.at(PipeSizes.path(j.design(), lowest.node() - 1))
                .during(lowest.running())
                .compare(
                        Comparison.atLeast(absolute, least, QuantityKind.PRESSURE),
                        "liquid",
                        "boils",
                        Arg.of("place", lowest.point().at())));
    }

    private static double weight(PlantNumbers numbers) {
        return numbers.water().density() * Gravity.STANDARD;
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        if (comparison == null) {
            return List.of();
        }
        double lift = (comparison.low() - comparison.value()) / weight(j.plant().numbers());
        return List.of(j.advice("lower", Arg.of("lift", Math.ceil(lift * 10) / 10, QuantityKind.LENGTH)));
    }
}
