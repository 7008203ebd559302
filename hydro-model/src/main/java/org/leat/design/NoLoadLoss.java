package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Power;
import org.leat.quantity.RotationalSpeed;

/**
 * Shaft power with nothing connected.
 *
 * @param power to turn the machine
 * @param speed while turning
 */
@About("Shaft power with nothing connected")
public record NoLoadLoss(
        @About("to turn the machine") @Limits(atLeast = 0) Quantity<Power> power,
        @About("while turning") @Limits(above = 0) Quantity<RotationalSpeed> speed) {

    public NoLoadLoss {
        Demand.limits(NoLoadLoss.class, power, speed).hold();
    }
}
