package org.leat.pack;

import org.leat.check.Judgement;
import org.leat.plant.cases.Closing;
import org.leat.plant.cases.Shut;
import org.leat.plant.numbers.Amount;

/** The highest pressure that a section of the penstock sees in any case: standing, or in the moment of a stop. */
final class HighestPressure {

    private HighestPressure() {}

    /**
     * A pressure and when it is seen.
     *
     * @param pressure Pa at the section's lowest point; unknown where a wave speed is
     * @param during the case
     */
    record Peak(Amount pressure, String during) {}

    /** {@return the highest pressure in a section} An unknown one goes before any known: it may be higher. */
    static Peak of(Judgement j, int section) {
        Shut shut = j.cases().shut();
        Peak peak = new Peak(Amount.of(shut.sections().get(section)), shut.id());
        for (Closing closing : j.cases().closing()) {
            Amount pressure = closing.sections().get(section);
            if (pressure.or(Double.POSITIVE_INFINITY) > peak.pressure().or(Double.POSITIVE_INFINITY)) {
                peak = new Peak(pressure, closing.id());
            }
        }
        return peak;
    }

    /** {@return the highest pressure anywhere in the penstock} */
    static Peak anywhere(Judgement j) {
        Peak highest = of(j, 0);
        for (int i = 1; i < j.plant().numbers().penstock().sections().size(); i++) {
            Peak peak = of(j, i);
            if (peak.pressure().or(Double.POSITIVE_INFINITY)
                    > highest.pressure().or(Double.POSITIVE_INFINITY)) {
                highest = peak;
            }
        }
        return highest;
    }
}
