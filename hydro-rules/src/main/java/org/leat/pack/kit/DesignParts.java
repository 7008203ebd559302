package org.leat.pack.kit;

import org.leat.check.Judgement;
import org.leat.design.Buckets;
import org.leat.design.BucketsBuilder;
import org.leat.design.Cable;
import org.leat.design.Installation;
import org.leat.design.InstallationBuilder;
import org.leat.design.Intake;
import org.leat.design.IntakeBuilder;
import org.leat.design.Runner;
import org.leat.design.Safeguards;
import org.leat.design.SafeguardsBuilder;

/** Parts that a design may leave out: each of their fields is absent then, as if the part were there and said nothing. */
public final class DesignParts {

    private DesignParts() {}

    /** {@return guards, earthing and means to stop} */
    public static Safeguards safeguards(Judgement j) {
        Safeguards stated = j.design().safeguards();
        return stated == null ? SafeguardsBuilder.builder().build() : stated;
    }

    /** {@return the intake} */
    public static Intake intake(Judgement j) {
        Intake stated = j.design().intake();
        return stated == null ? IntakeBuilder.builder().build() : stated;
    }

    /** {@return the runner's buckets, those of a runner that is left out among them} */
    public static Buckets buckets(Judgement j) {
        Runner runner = j.design().runner();
        Buckets stated = runner == null ? null : runner.buckets();
        return stated == null ? BucketsBuilder.builder().build() : stated;
    }

    /** {@return how a cable is laid} */
    public static Installation installation(Cable cable) {
        Installation stated = cable.installation();
        return stated == null ? InstallationBuilder.builder().build() : stated;
    }
}
