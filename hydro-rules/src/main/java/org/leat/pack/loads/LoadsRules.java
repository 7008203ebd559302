package org.leat.pack.loads;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the loads. */
public final class LoadsRules {

    private LoadsRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(LoadsEnergyBalance.RULE, OnBus.RULE, PackOnBus.RULE, ResidualCurrent.RULE, VehicleCharging.RULE);
    }
}
