package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Power;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** Resistor that takes what the battery does not. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Resistor that takes what the battery does not")
@Sample("{ resistance: 1.2 \u03a9, power-rating: 900 W }")
public record DumpLoad(
        @About("cold, all elements together") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricResistance> resistance,

        @About("at working temperature") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricResistance> resistanceHot,

        @About("all elements together") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Power> powerRating,

        @About("at which the power rating is meant") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> ratedVoltage,

        @About("at which it is switched on") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> triggerVoltage,

        @About("of its switch") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricCurrent> switchRating,

        @About("which side of the battery's fuse it hangs on") @CanBeAbsent @Nullable
        DumpSide side,

        @About("whether a thermostat or switch for a.c. sits in it") @CanBeAbsent @Nullable
        Boolean alternatingCurrentSwitch,

        @About("against touch and heat") @CanBeAbsent @Nullable
        Boolean guardedAndVented,

        @About("in its branch") @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricCurrent> fuse,

        @About("that the fuse in its branch can break") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> fuseDirectVoltage) {

    public DumpLoad {
        Demand.limits(
                        DumpLoad.class,
                        resistance,
                        resistanceHot,
                        powerRating,
                        ratedVoltage,
                        triggerVoltage,
                        switchRating,
                        side,
                        alternatingCurrentSwitch,
                        guardedAndVented,
                        fuse,
                        fuseDirectVoltage)
                .that(
                        resistance != null || (powerRating != null && ratedVoltage != null),
                        "resistance",
                        null,
                        "the resistance, or power and voltage rating")
                .hold();
    }
}
