package org.leat.plant.duties;

import java.util.OptionalDouble;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.electrics.CycleLife;
import org.leat.law.Answer;
import org.leat.plant.numbers.PlantNumbers;

/**
 * Years of the battery by its cycles, if every day is such a day of full use, or every year such a year.
 *
 * @param depth of a day's cycle, or the deepest of the year, at most one
 * @param years a (365.25 days each); empty where the cycles are so shallow that age decides
 */
public record CycleYears(double depth, OptionalDouble years) {

    /** Years after which a battery has ended by age, whatever its cycles; common practice: 5 to 15. */
    private static final double WORN_BY_AGE = 20;

    /**
     * {@return the years, if every year is like the days that were run} Lead is taken to be as warm as the warmest air.
     *
     * @param deepest share of the bank that was out at the lowest
     * @param lifeUsed share of the life by cycles that those days used up; empty where none goes deep enough to tell; where it is
     *     so little that the battery has long ended by age, age decides too
     * @param days that were run
     */
    public static CycleYears ofDays(double deepest, OptionalDouble lifeUsed, int days, PlantNumbers numbers) {
        if (lifeUsed.isEmpty() || lifeUsed.getAsDouble() <= 0) {
            return new CycleYears(deepest, OptionalDouble.empty());
        }
        double years = CycleLife.years(days / lifeUsed.getAsDouble(), 1, temperatureFactor(numbers));
        return new CycleYears(deepest, years > WORN_BY_AGE ? OptionalDouble.empty() : OptionalDouble.of(years));
    }

    private static double temperatureFactor(PlantNumbers numbers) {
        return numbers.battery().isLead()
                ? CycleLife.leadTemperatureFactor(numbers.site().highestAirTemperature())
                : 1;
    }

    /** {@return the years} Lead is taken to be as warm as the warmest air. */
    public static CycleYears of(FullDay day, PlantNumbers numbers) {
        double depth = Math.min(1, day.depth());
        if (!(CellChemistryCatalogue.cycles(numbers.battery().chemistry(), depth) instanceof Answer.Value cycles)) {
            return new CycleYears(depth, OptionalDouble.empty());
        }
        double factor = temperatureFactor(numbers);
        return new CycleYears(depth, OptionalDouble.of(CycleLife.years(cycles.value(), 1, factor)));
    }
}
