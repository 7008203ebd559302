package org.leat.design;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Si;

/** One length of the same pipe. */
@API(status = API.Status.STABLE, since = "0.1")
@About("One length of the same pipe")
@Sample("{ name: run, length: 90 m, pipe: { kind: polyethylene, material: pe100, outside-diameter: 63 mm, sdr: 17 } }")
public record Section(
        @About("of its own") String name,
        @About("what it is made of") Pipe pipe,

        @About("along the pipe") @Limits(atLeast = 0.001, atMost = 100_000)
        Quantity<Length> length,

        @About("of its upper end above the nozzle axis") @CanBeAbsent @Nullable
        Quantity<Length> fromElevation,

        @About("of its lower end above the nozzle axis") @CanBeAbsent @Nullable
        Quantity<Length> toElevation,

        @About("in this section") @Limits(mostItems = 100) List<Fitting> fittings,

        @About("whether a high point in it has an air valve") @CanBeAbsent @Nullable
        Boolean ventedHighPoint,

        @About("whether it is meant to run as a siphon, with means to fill it and to draw off its air")
        @CanBeAbsent
        @Nullable
        Boolean siphon) {

    public Section {
        fittings = List.copyOf(fittings);
        Demand.limits(Section.class, name, pipe, length, fromElevation, toElevation, fittings, ventedHighPoint, siphon)
                .that(
                        fromElevation == null
                                || toElevation == null
                                || Math.abs(Si.of(fromElevation) - Si.of(toElevation)) <= Si.of(length),
                        "toElevation",
                        toElevation,
                        "a fall or rise no longer than the section, " + Demand.print(length))
                .hold();
    }
}
