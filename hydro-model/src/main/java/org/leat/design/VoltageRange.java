package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.apiguardian.api.API;
import org.leat.quantity.Si;

/** A range of voltage. */
@API(status = API.Status.STABLE, since = "0.1")
@About("A range of voltage")
public record VoltageRange(
        @About("least") @Limits(atLeast = 0) Quantity<ElectricPotential> from,
        @About("greatest") @Limits(above = 0) Quantity<ElectricPotential> to) {

    public VoltageRange {
        Demand.limits(VoltageRange.class, from, to)
                .that(Si.of(to) > Si.of(from), "to", to, "more than the least, " + Demand.print(from))
                .hold();
    }
}
