package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;

/** One sighted leg. */
@About("One sighted leg")
public record ClinometerLeg(
        @About("along the slope") @Limits(above = 0) Quantity<Length> distance,
        @About("above the horizontal") Quantity<Angle> angle) {

    public ClinometerLeg {
        Demand.limits(ClinometerLeg.class, distance, angle).hold();
    }
}
