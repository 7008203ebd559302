package org.leat.pack;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.plant.cases.BatteryFull;

/** What a dump load takes at its worst. */
final class Dumped {

    private Dumped() {}

    /** {@return the situation in which most is diverted; null without a dump load whose resistance is known} */
    static @Nullable BatteryFull most(Judgement j) {
        return j.plant().numbers().dumpLoad() == null || j.cases().batteryFull().isEmpty()
                ? null
                : Worst.most(j.cases().batteryFull(), BatteryFull::dumpVoltage);
    }

    /** {@return not applicable where there is no dump load, open where nothing is solved; null where the rule can judge} */
    static @Nullable List<Outcome> without(Judgement j, String none) {
        if (j.design().dumpLoad() == null) {
            return List.of(j.at("/dump-load").notApplicable(none));
        }
        return j.cases().batteryFull().isEmpty() ? Open.unsolved(j) : null;
    }
}
