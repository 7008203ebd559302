package org.leat.plant.duties;

import java.util.function.DoublePredicate;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Closing;
import org.leat.plant.cases.Shut;
import org.leat.plant.cases.StopPeak;
import org.leat.plant.numbers.Amount;

/**
 * The highest pressure that the penstock sees in any case: standing, or in a stop, the blow of a water column that parts and rejoins
 * included. One that is too much goes before one that is not known, and that before one that is held: it may be higher.
 *
 * @param pressure Pa at the lowest point; unknown where a wave speed is, or where what is computed of a rejoining column does not
 *     tell whether it is held
 * @param during id of the case
 * @param rejoined whether it is that of a rejoined column
 */
public record HighestPressure(Amount pressure, String during, boolean rejoined) {

    /**
     * {@return that of a section}
     *
     * @param section its place in the list
     * @param holds whether a pressure is held, Pa; a greater one no better
     */
    public static HighestPressure of(Cases cases, int section, DoublePredicate holds) {
        Shut shut = cases.shut();
        HighestPressure highest = new HighestPressure(Amount.of(shut.sections().get(section)), shut.id(), false);
        for (Closing closing : cases.closing()) {
            StopPeak peak = closing.peak(section);
            Amount pressure = peak.against(holds);
            highest = highest.or(new HighestPressure(pressure, closing.id(), peak.rejoined(pressure.or(0))), holds);
        }
        return highest;
    }

    /** {@return that of the whole penstock} */
    public static HighestPressure anywhere(Cases cases, DoublePredicate holds) {
        HighestPressure highest = of(cases, 0, holds);
        for (int i = 1; i < cases.numbers().penstock().sections().size(); i++) {
            highest = highest.or(of(cases, i, holds), holds);
        }
        return highest;
    }

    private HighestPressure or(HighestPressure other, DoublePredicate holds) {
        int rank = Integer.compare(other.rank(holds), rank(holds));
        return rank > 0 || (rank == 0 && other.pressure.or(0) > pressure.or(0)) ? other : this;
    }

    private int rank(DoublePredicate holds) {
        return pressure instanceof Amount.Known known ? holds.test(known.value()) ? 0 : 2 : 1;
    }
}
