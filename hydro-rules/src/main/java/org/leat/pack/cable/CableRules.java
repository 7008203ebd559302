package org.leat.pack.cable;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the cables. */
public final class CableRules {

    private CableRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(
                AcOrDcRun.RULE,
                Ampacity.RULE,
                InsulationVoltage.RULE,
                JoinedAsSaid.RULE,
                RunProtection.RULE,
                RunVoltageDrop.RULE);
    }
}
