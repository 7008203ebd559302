package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.apiguardian.api.API;

/** One sighted leg. */
@API(status = API.Status.STABLE, since = "0.1")
@About("One sighted leg")
public record ClinometerLeg(
        @About("along the slope") @Limits(above = 0) Quantity<Length> distance,
        @About("above the horizontal") Quantity<Angle> angle) {

    public ClinometerLeg {
        Demand.limits(ClinometerLeg.class, distance, angle).hold();
    }
}
