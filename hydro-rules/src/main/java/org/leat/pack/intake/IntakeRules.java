package org.leat.pack.intake;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the intake. */
public final class IntakeRules {

    private IntakeRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(
                ApproachVelocity.RULE,
                OpeningAgainstNozzle.RULE,
                ScreenLoss.RULE,
                Icing.RULE,
                VentFreezes.RULE,
                Settling.RULE,
                InletSubmergence.RULE,
                AirVent.RULE);
    }
}
