package org.leat.pack.bus;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the bus. */
public final class BusRules {

    private BusRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(Overvoltage.RULE);
    }
}
