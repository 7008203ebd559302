package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * One run between two parts.
 *
 * @param from where it begins
 * @param to where it ends
 * @param length one way
 * @param conductor of each core
 * @param installation how it is laid
 * @param ratedVoltage direct voltage the insulation is made for
 * @param overhead whether it hangs in the open
 * @param surgeProtected whether both ends have surge protection
 */
@About("One run between two parts")
public record Cable(
        @About("where it begins") Place from,
        @About("where it ends") Place to,
        @About("one way") @Limits(above = 0) Quantity<Length> length,
        @About("of each core") Conductor conductor,
        @About("how it is laid") @Nullable Installation installation,

        @About("direct voltage the insulation is made for") @Limits(above = 0) @Nullable
        Quantity<ElectricPotential> ratedVoltage,

        @About("whether it hangs in the open") @Nullable Boolean overhead,

        @About("whether both ends have surge protection") @Nullable
        Boolean surgeProtected) {

    public Cable {
        Demand.limits(Cable.class, from, to, length, conductor, installation, ratedVoltage, overhead, surgeProtected)
                .that(from != to, "to", to, "another part than where it begins")
                .hold();
    }
}
