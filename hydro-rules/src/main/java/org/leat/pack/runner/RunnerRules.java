package org.leat.pack.runner;

import java.util.List;
import org.leat.check.Rule;

/** The rules of the runner. */
public final class RunnerRules {

    private RunnerRules() {}

    /** {@return every one} */
    public static List<Rule> all() {
        return List.of(
                RunnerBearingLife.RULE,
                BucketCount.RULE,
                BucketRoot.RULE,
                Guard.RULE,
                HubFastening.RULE,
                PitchAgainstJet.RULE,
                PrintedMaterial.RULE,
                RunawayStrength.RULE,
                Shaft.RULE,
                BucketSpeedRatio.RULE,
                TailwaterHeight.RULE);
    }
}
