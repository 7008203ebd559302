package org.leat.pack.protection;

import java.util.List;
import org.leat.check.Rule;

/** The rules of protection. */
public final class ProtectionRules {

    private ProtectionRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(
                AlternatorCannotTrip.RULE,
                BatteryFuse.RULE,
                BreakerFrequency.RULE,
                BreakerPolarity.RULE,
                BreakingCapacity.RULE,
                ContinuousCurrent.RULE,
                DcRated.RULE,
                Earthing.RULE,
                FullRangeFuse.RULE,
                Isolator.RULE,
                Selectivity.RULE,
                ShortCircuitBrake.RULE,
                ShortTime.RULE,
                SurgeArrester.RULE,
                TurbineNotFusedOpen.RULE,
                TouchVoltageLimit.RULE);
    }
}
