package org.leat.pack.regulator;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the charge regulator. */
public final class RegulatorRules {

    private RegulatorRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(
                ShortCurrent.RULE,
                RegulatorCurrent.RULE,
                FailedShort.RULE,
                InputClamp.RULE,
                KindForHydro.RULE,
                SetPoints.RULE,
                RegulatorTemperatureCompensation.RULE,
                Window.RULE);
    }
}
