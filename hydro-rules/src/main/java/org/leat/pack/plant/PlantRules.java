package org.leat.pack.plant;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the whole plant. */
public final class PlantRules {

    private PlantRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(EfficiencyChain.RULE, LeftOnTheTable.RULE, MaintenancePlan.RULE, Restart.RULE, StopSafely.RULE);
    }
}
