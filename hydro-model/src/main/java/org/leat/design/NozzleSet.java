package org.leat.design;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * Nozzles on hand and those open.
 *
 * @param open bores of the nozzles open as built
 * @param available bores of every nozzle on hand
 * @param sets the sets to be judged; each bore on hand in all positions if left out
 * @param form how the nozzle is shaped inside
 * @param velocityCoefficient jet velocity over the ideal
 * @param contractionCoefficient jet area over bore area
 * @param branchBore of the pipe to each nozzle
 * @param branchLoss loss coefficient of each branch on its bore
 * @param shutOffTime of the valve or needle at a nozzle
 * @param worn those in use, with their bores as measured
 * @param grit how much sand the water brings to them
 * @param shutOffBy what shuts a nozzle
 */
@About("Nozzles on hand and those open")
public record NozzleSet(
        @About("bores of the nozzles open as built") @Limits(above = 0, atMost = 1, items = 1)
        List<Quantity<Length>> open,

        @About("bores of every nozzle on hand") @Limits(above = 0, atMost = 1)
        List<Quantity<Length>> available,

        @About("the sets to be judged; each bore on hand in all positions if left out")
        List<NozzleChoice> sets,

        @About("how the nozzle is shaped inside") @Nullable NozzleForm form,

        @About("jet velocity over the ideal") @Limits(above = 0, atMost = 1) @Nullable
        Double velocityCoefficient,

        @About("jet area over bore area") @Limits(above = 0, atMost = 1) @Nullable
        Double contractionCoefficient,

        @About("of the pipe to each nozzle") @Limits(above = 0) @Nullable
        Quantity<Length> branchBore,

        @About("loss coefficient of each branch on its bore") @Limits(atLeast = 0) @Nullable
        Double branchLoss,

        @About("of the valve or needle at a nozzle") @Limits(atLeast = 0) @Nullable
        Quantity<Time> shutOffTime,

        @About("those in use, with their bores as measured") List<WornNozzle> worn,

        @About("how much sand the water brings to them") @Nullable
        Grit grit,

        @About("what shuts a nozzle") @Nullable ShutOff shutOffBy) {

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
