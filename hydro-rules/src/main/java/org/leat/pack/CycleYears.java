package org.leat.pack;

import org.jspecify.annotations.Nullable;
import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.check.Judgement;
import org.leat.design.Chemistry;
import org.leat.electrics.CycleLife;
import org.leat.law.Answer;
import org.leat.plant.cases.Running;

/**
 * Years of the battery by its cycles, every day a day of full use at the flow of the year that gives least.
 *
 * @param missing field that is not stated; null where nothing is missing
 * @param depth of a day's cycle, as a share
 * @param years null where a field is missing, or the cycles are so shallow that age decides
 */
record CycleYears(
        @Nullable String missing, double depth, @Nullable Double years) {

    /** The plant is solved. */
    static CycleYears of(Judgement j) {
        DailyUse daily = DailyUse.of(j.design());
        if (daily.missing() != null) {
            return new CycleYears(daily.missing(), 0, null);
        }
        Running lean = Lean.of(j);
        double depth = Math.min(
                1,
                DailyUse.deepest(j.design(), daily.use(), lean.operatingPoint().batteryPower()) / Lean.stored(j));
        Chemistry chemistry = j.design().battery().chemistry();
        if (!(CellChemistryCatalogue.cycles(chemistry, depth) instanceof Answer.Value cycles)) {
            return new CycleYears(null, depth, null);
        }
        double factor = Lead.is(j)
                ? CycleLife.leadTemperatureFactor(j.plant().numbers().site().highestAirTemperature())
                : 1;
        return new CycleYears(null, depth, CycleLife.years(cycles.value(), 1, factor));
    }
}
