package org.leat.design;

import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** Another choice for one or more whole parts of a design. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Another choice for one or more whole parts of a design")
public record Alternative(
        @About("what to call this choice") String name,

        @About("in place of the design's site") @CanBeAbsent @Nullable
        Site site,

        @About("in place of the design's intake") @CanBeAbsent @Nullable
        Intake intake,

        @About("in place of the design's penstock") @CanBeAbsent @Nullable
        Penstock penstock,

        @About("in place of the design's nozzles") @CanBeAbsent @Nullable
        NozzleSet nozzles,

        @About("in place of the design's runner") @CanBeAbsent @Nullable
        Runner runner,

        @About("in place of the design's alternator") @CanBeAbsent @Nullable
        Alternator alternator,

        @About("in place of the design's rectifier") @CanBeAbsent @Nullable
        Rectifier rectifier,

        @About("in place of all the design's cables") @Limits(mostItems = 50)
        List<Cable> cables,

        @About("in place of the design's regulator") @CanBeAbsent @Nullable
        ChargeRegulator regulator,

        @About("in place of the design's dump load") @CanBeAbsent @Nullable
        DumpLoad dumpLoad,

        @About("in place of the design's battery") @CanBeAbsent @Nullable
        BatteryBank battery,

        @About("in place of the design's inverter") @CanBeAbsent @Nullable
        Inverter inverter) {

    public Alternative {
        cables = List.copyOf(cables);
        Demand.limits(
                        Alternative.class,
                        name,
                        site,
                        intake,
                        penstock,
                        nozzles,
                        runner,
                        alternator,
                        rectifier,
                        cables,
                        regulator,
                        dumpLoad,
                        battery,
                        inverter)
                .hold();
    }
}
