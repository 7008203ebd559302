package org.leat.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Another choice for one or more whole parts of a design.
 *
 * @param name what to call this choice
 * @param site in place of the design's site
 * @param intake in place of the design's intake
 * @param penstock in place of the design's penstock
 * @param nozzles in place of the design's nozzles
 * @param runner in place of the design's runner
 * @param alternator in place of the design's alternator
 * @param rectifier in place of the design's rectifier
 * @param cables in place of all the design's cables
 * @param regulator in place of the design's regulator
 * @param dumpLoad in place of the design's dump load
 * @param battery in place of the design's battery
 * @param inverter in place of the design's inverter
 */
@About("Another choice for one or more whole parts of a design")
public record Alternative(
        @About("what to call this choice") String name,
        @About("in place of the design's site") @Nullable Site site,
        @About("in place of the design's intake") @Nullable Intake intake,

        @About("in place of the design's penstock") @Nullable
        Penstock penstock,

        @About("in place of the design's nozzles") @Nullable NozzleSet nozzles,
        @About("in place of the design's runner") @Nullable Runner runner,

        @About("in place of the design's alternator") @Nullable
        Alternator alternator,

        @About("in place of the design's rectifier") @Nullable
        Rectifier rectifier,

        @About("in place of all the design's cables") List<Cable> cables,

        @About("in place of the design's regulator") @Nullable
        ChargeRegulator regulator,

        @About("in place of the design's dump load") @Nullable
        DumpLoad dumpLoad,

        @About("in place of the design's battery") @Nullable BatteryBank battery,

        @About("in place of the design's inverter") @Nullable
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
