package org.leat.pack.site;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the site. */
public final class SiteRules {

    private SiteRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(
                FloodLevel.RULE,
                FlowAvailable.RULE,
                Freezing.RULE,
                HeadConsistent.RULE,
                KeptFlow.RULE,
                MeasurementSpread.RULE);
    }
}
