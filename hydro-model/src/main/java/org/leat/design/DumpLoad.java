package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Power;
import org.jspecify.annotations.Nullable;

/**
 * Resistor that takes what the battery does not.
 *
 * @param resistance cold, all elements together
 * @param resistanceHot at working temperature
 * @param powerRating all elements together
 * @param ratedVoltage at which the power rating is meant
 * @param triggerVoltage at which it is switched on
 * @param switchRating of its switch
 * @param side which side of the battery's fuse it hangs on
 * @param alternatingCurrentSwitch whether a thermostat or switch for a.c. sits in it
 * @param guardedAndVented against touch and heat
 * @param fuse in its branch
 */
@About("Resistor that takes what the battery does not")
public record DumpLoad(
        @About("cold, all elements together") @Limits(above = 0) @Nullable
        Quantity<ElectricResistance> resistance,

        @About("at working temperature") @Limits(above = 0) @Nullable
        Quantity<ElectricResistance> resistanceHot,

        @About("all elements together") @Limits(above = 0) @Nullable
        Quantity<Power> powerRating,

        @About("at which the power rating is meant") @Limits(above = 0) @Nullable
        Quantity<ElectricPotential> ratedVoltage,

        @About("at which it is switched on") @Limits(above = 0) @Nullable
        Quantity<ElectricPotential> triggerVoltage,

        @About("of its switch") @Limits(above = 0) @Nullable Quantity<ElectricCurrent> switchRating,

        @About("which side of the battery's fuse it hangs on") @Nullable
        DumpSide side,

        @About("whether a thermostat or switch for a.c. sits in it") @Nullable
        Boolean alternatingCurrentSwitch,

        @About("against touch and heat") @Nullable Boolean guardedAndVented,
        @About("in its branch") @Limits(above = 0) @Nullable Quantity<ElectricCurrent> fuse) {

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
                        fuse)
                .that(
                        resistance != null || (powerRating != null && ratedVoltage != null),
                        "resistance",
                        null,
                        "the resistance, or power and voltage rating")
                .hold();
    }
}
