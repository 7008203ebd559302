package org.leat.plant.duties;

import java.util.List;
import org.leat.hydraulics.RecurringPressure;
import org.leat.hydraulics.VinsonCycles;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Closing;
import org.leat.plant.loads.OutsideLoad;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;

/**
 * A stop that somebody makes again and again, as one section of the penstock feels it. A nozzle that is plugged is none.
 *
 * @param closing the stop
 * @param highest pressure, the blow of a parted column included, Pa; unknown where a wave speed is, or nothing can be said of the blow
 * @param lowest pressure, Pa; a vacuum where the column parts, unknown where a wave speed is
 */
public record RecurringStop(Closing closing, Amount highest, Amount lowest) {

    /** Head deeper than any vacuum, m. */
    private static final double FAR_BELOW_VACUUM = -100;

    private static final double YEAR = 365.25 * 86400;

    /** {@return every stop of that kind; empty where nothing is stated that shuts} */
    public static List<RecurringStop> of(Cases cases, int section) {
        return cases.closing().stream()
                .filter(closing -> recurs(closing.cause()))
                .map(closing -> new RecurringStop(
                        closing, closing.peak(section).highest(), lowest(cases.numbers(), closing, section)))
                .toList();
    }

    private static boolean recurs(Closing.Cause cause) {
        return cause == Closing.Cause.VALVE || cause == Closing.Cause.NOZZLE_SHUT || cause == Closing.Cause.INLET_SHUT;
    }

    private static Amount lowest(PlantNumbers numbers, Closing closing, int section) {
        return closing.parts() != null
                ? Amount.of(-OutsideLoad.suction(numbers, FAR_BELOW_VACUUM))
                : closing.lowest().get(section);
    }

    /** {@return highest less lowest, Pa} */
    public Amount range() {
        return lowest instanceof Amount.Known least ? highest.map(most -> most - least.value()) : lowest;
    }

    /** {@return share of its rating within which PVC-U may see its pressure come and go} See {@link RecurringPressure}. */
    public static double rangeShare() {
        return RecurringPressure.RANGE;
    }

    /**
     * {@return years until a pipe of PVC-U fails under its highest pressure} See {@link VinsonCycles}.
     *
     * @param highest pressure of a cycle, Pa
     * @param stopsPerYear how often
     */
    public static Amount years(SectionNumbers section, double highest, int stopsPerYear) {
        double ratio = section.outsideDiameter() / section.leastWall();
        return Amount.of(VinsonCycles.life(Math.max(1, highest), ratio, stopsPerYear), section.path() + "/pipe")
                .times(1 / YEAR);
    }
}
