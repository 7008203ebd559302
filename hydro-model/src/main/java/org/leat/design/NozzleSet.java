package org.leat.design;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** Nozzles on hand and those open. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Nozzles on hand and those open")
@Sample("{ open: [10 mm] }")
public record NozzleSet(
        @About("bores of the nozzles open as built") @Limits(atLeast = 1e-4, atMost = 1, items = 1, mostItems = 40)
        List<Quantity<Length>> open,

        @About("bores of every nozzle on hand") @Limits(atLeast = 1e-4, atMost = 1, mostItems = 40)
        List<Quantity<Length>> available,

        @About("the sets to be judged; each bore on hand in all positions if left out") @Limits(mostItems = 40)
        List<NozzleChoice> sets,

        @About("how the nozzle is shaped inside") @CanBeAbsent @Nullable
        NozzleForm form,

        @About("jet velocity over the ideal") @Limits(above = 0, atMost = 1) @CanBeAbsent @Nullable
        Double velocityCoefficient,

        @About("jet area over bore area") @Limits(above = 0, atMost = 1) @CanBeAbsent @Nullable
        Double contractionCoefficient,

        @About("of the pipe to each nozzle") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Length> branchBore,

        @About("loss coefficient of each branch on its bore") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Double branchLoss,

        @About("of the valve or needle at a nozzle") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<Time> shutOffTime,

        @About("those in use, with their bores as measured") @Limits(mostItems = 40)
        List<WornNozzle> worn,

        @About("how much sand the water brings to them") @CanBeAbsent @Nullable
        Grit grit,

        @About("what shuts a nozzle") @CanBeAbsent @Nullable ShutOff shutOffBy) {

    public NozzleSet {
        open = List.copyOf(open);
        available = List.copyOf(available);
        sets = List.copyOf(sets);
        worn = List.copyOf(worn);
        Demand.limits(
                        NozzleSet.class,
                        open,
                        available,
                        sets,
                        form,
                        velocityCoefficient,
                        contractionCoefficient,
                        branchBore,
                        branchLoss,
                        shutOffTime,
                        worn,
                        grit,
                        shutOffBy)
                .hold();
    }
}
