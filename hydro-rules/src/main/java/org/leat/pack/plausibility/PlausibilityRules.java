package org.leat.pack.plausibility;

import java.util.List;
import org.leat.check.Rule;

/** The rules of what was written. */
public final class PlausibilityRules {

    private PlausibilityRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(
                AtOdds.RULE,
                ElementLabel.RULE,
                MarkOverWall.RULE,
                OutsideOrInside.RULE,
                PipeOverFall.RULE,
                ReadingOfVolts.RULE,
                Sizes.RULE);
    }
}
