package org.leat.pack.dump;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the dump load. */
public final class DumpRules {

    private DumpRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(
                AbsorbsAll.RULE,
                AcSwitch.RULE,
                BranchProtection.RULE,
                ElementVoltage.RULE,
                GuardAlone.RULE,
                Heat.RULE,
                Lost.RULE,
                OwnRating.RULE,
                SecondLine.RULE,
                SideOfBridge.RULE,
                StuckOn.RULE,
                SwitchRating.RULE);
    }
}
