package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** Electronics that open the battery by themselves. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Electronics that open the battery by themselves")
public record BatteryManagement(
        @About("cuts charging below freezing") @CanBeAbsent @Nullable
        Boolean opensOnCold,

        @About("voltage of the whole bank") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> opensAbove,

        @About("at which it opens") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricCurrent> currentLimit,

        @About("that its switch can stand") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> voltageRating) {

    public BatteryManagement {
        Demand.limits(BatteryManagement.class, opensOnCold, opensAbove, currentLimit, voltageRating)
                .hold();
    }
}
