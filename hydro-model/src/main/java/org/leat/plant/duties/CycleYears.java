package org.leat.plant.duties;

import java.util.OptionalDouble;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.electrics.CycleLife;
import org.leat.law.Answer;
import org.leat.plant.numbers.PlantNumbers;

/**
 * Years of the battery by its cycles, if every day is such a day of full use.
 *
 * @param depth of a day's cycle, at most one
 * @param years a (365.25 days each); empty where the cycles are so shallow that age decides
 */
public record CycleYears(double depth, OptionalDouble years) {

    /** {@return the years} Lead is taken to be as warm as the warmest air. */
    public static CycleYears of(FullDay day, PlantNumbers numbers) {
        double depth = Math.min(1, day.depth());
        if (!(CellChemistryCatalogue.cycles(numbers.battery().chemistry(), depth) instanceof Answer.Value cycles)) {
            return new CycleYears(depth, OptionalDouble.empty());
        }
        double factor = numbers.battery().isLead()
                ? CycleLife.leadTemperatureFactor(numbers.site().highestAirTemperature())
                : 1;
        return new CycleYears(depth, OptionalDouble.of(CycleLife.years(cycles.value(), 1, factor)));
    }
}
