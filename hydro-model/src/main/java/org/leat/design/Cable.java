package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** One run between two parts. */
@API(status = API.Status.STABLE, since = "0.1")
@About("One run between two parts")
@Sample("{ from: alternator, to: rectifier, length: 12 m, conductor: { material: copper, area: 4 mm\u00b2 } }")
public record Cable(
        @About("where it begins") Place from,
        @About("where it ends") Place to,
        @About("one way") @Limits(above = 0) Quantity<Length> length,
        @About("of each core") Conductor conductor,
        @About("how it is laid") @CanBeAbsent @Nullable Installation installation,

        @About("direct voltage the insulation is made for") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> ratedVoltage,

        @About("whether it hangs in the open") @CanBeAbsent @Nullable
        Boolean overhead,

        @About("whether both ends have surge protection") @CanBeAbsent @Nullable
        Boolean surgeProtected) {

    public Cable {
        Demand.limits(Cable.class, from, to, length, conductor, installation, ratedVoltage, overhead, surgeProtected)
                .that(from != to, "to", to, "another part than where it begins")
                .hold();
    }
}
