package org.leat.pack.penstock;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the penstock. */
public final class PenstockRules {

    private PenstockRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(Velocity.RULE);
    }
}
