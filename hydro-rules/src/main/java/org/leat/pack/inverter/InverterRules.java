package org.leat.pack.inverter;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the inverter. */
public final class InverterRules {

    private InverterRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(Continuous.RULE, CutOff.RULE, InputWindow.RULE, StandingLoss.RULE, InverterSurge.RULE);
    }
}
