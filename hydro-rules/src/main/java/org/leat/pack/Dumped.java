package org.leat.pack;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Spot;
import org.leat.design.RegulatorKind;
import org.leat.plant.BatteryFull;

/** What a dump load takes at its worst. */
final class Dumped {

    private Dumped() {}

    /** {@return the situation in which most is diverted; null without a dump load whose resistance is known} */
    static @Nullable BatteryFull most(Judgement j) {
        return j.plant().numbers().dumpLoad() == null || j.cases().batteryFull().isEmpty()
                ? null
                : Worst.most(j.cases().batteryFull(), full -> voltage(j, full));
    }

    /**
     * {@return voltage across the element, V} Its trigger's, the battery's absorption voltage; more where the element is
     * too small to hold it. A runaway is not counted: there nothing is joined to the turbine.
     */
    static double voltage(Judgement j, BatteryFull full) {
        double absorption = j.plant().numbers().battery().absorptionVoltage();
        return full.answer() == BatteryFull.Answer.DUMP_TOO_SMALL
                ? Math.max(absorption, full.highestVoltage())
                : absorption;
    }

    /** {@return open or not applicable, where the rule cannot judge the dump load; null where it can} */
    static @Nullable List<Outcome> without(Judgement j, String none) {
        if (j.design().dumpLoad() == null) {
            boolean stated =
                    j.design().regulator() != null && j.design().regulator().kind() != RegulatorKind.SHUNT;
            Spot spot = j.at("/dump-load");
            return List.of(stated ? spot.notApplicable(none) : spot.notGiven("/dump-load"));
        }
        return j.cases().batteryFull().isEmpty() ? Open.unsolved(j) : null;
    }
}
