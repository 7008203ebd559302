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
                DrainDown.RULE,
                Expansion.RULE,
                Fatigue.RULE,
                FittingsRating.RULE,
                FrictionShare.RULE,
                FrostBrittle.RULE,
                HoseRating.RULE,
                Oversized.RULE,
                PenstockPressureRange.RULE,
                RefillRate.RULE,
                StaticPressure.RULE,
                StiffInlet.RULE,
                PipeSunlight.RULE,
                Supports.RULE,
                SurgePressure.RULE,
                PipeTemperature.RULE,
                Thrust.RULE,
                Velocity.RULE);
    }
}
