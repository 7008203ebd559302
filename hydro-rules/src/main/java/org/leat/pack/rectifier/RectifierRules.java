package org.leat.pack.rectifier;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the rectifier. */
public final class RectifierRules {

    private RectifierRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(
                BridgeCapacitor.RULE,
                BridgeCurrent.RULE,
                DiodeShort.RULE,
                DropShare.RULE,
                DiodeTemperature.RULE,
                DiodeReverseVoltage.RULE);
    }
}
