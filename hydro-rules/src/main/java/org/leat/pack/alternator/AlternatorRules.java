package org.leat.pack.alternator;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the alternator. */
public final class AlternatorRules {

    private AlternatorRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(
                CutIn.RULE,
                IronFrequency.RULE,
                HoldsRunner.RULE,
                LoadedEfficiency.RULE,
                MagnetGradeLimit.RULE,
                Overspeed.RULE,
                PhasesAlike.RULE,
                SecondSpeed.RULE,
                StarOrDelta.RULE,
                NearTorquePeak.RULE,
                WetElectrics.RULE,
                WindingCurrent.RULE,
                WindingInsulation.RULE);
    }
}
