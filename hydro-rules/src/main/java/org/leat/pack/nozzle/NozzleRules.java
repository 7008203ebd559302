package org.leat.pack.nozzle;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the nozzles. */
public final class NozzleRules {

    private NozzleRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(
                JetAgainstBucket.RULE, JetsInterfere.RULE, SetCoversStream.RULE, StepSize.RULE, WornNozzles.RULE);
    }
}
