package org.leat.pack.penstock;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the penstock. */
public final class PenstockRules {

    private PenstockRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(
                AbruptSteps.RULE,
                AirPockets.RULE,
                BelowAtmosphere.RULE,
                Cavitation.RULE,
                ClosingTime.RULE,
                Collapse.RULE,
                Expansion.RULE,
                FittingsRating.RULE,
                FrictionShare.RULE,
                HoseRating.RULE,
                Oversized.RULE,
                StaticPressure.RULE,
                StiffInlet.RULE,
                PipeInSun.RULE,
                SurgePressure.RULE,
                PipeTemperature.RULE,
                Thrust.RULE,
                Velocity.RULE);
    }
}
