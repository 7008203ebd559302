package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A fuse, breaker or switch.
 *
 * @param name what to call it
 * @param kind what it is
 * @param from the run it sits in begins here
 * @param to and ends here
 * @param ratedCurrent as marked
 * @param directVoltage that it can break
 * @param breakingCapacity for direct current
 * @param distanceFromBattery along the cable
 * @param tripCurve of a breaker
 * @param breaksLoad whether a switch may be opened while current flows
 */
@About("A fuse, breaker or switch")
public record ProtectiveDevice(
        @About("what to call it") String name,
        @About("what it is") DeviceKind kind,
        @About("the run it sits in begins here") Place from,
        @About("and ends here") Place to,
        @About("as marked") @Limits(above = 0) Quantity<ElectricCurrent> ratedCurrent,

        @About("that it can break") @Limits(above = 0) @Nullable
        Quantity<ElectricPotential> directVoltage,

        @About("for direct current") @Limits(above = 0) @Nullable
        Quantity<ElectricCurrent> breakingCapacity,

        @About("along the cable") @Limits(atLeast = 0) @Nullable
        Quantity<Length> distanceFromBattery,

        @About("of a breaker") @Nullable TripCurve tripCurve,

        @About("whether a switch may be opened while current flows") @Nullable
        Boolean breaksLoad) {

    public ProtectiveDevice {
        Demand.limits(
                        ProtectiveDevice.class,
                        name,
                        kind,
                        from,
                        to,
                        ratedCurrent,
                        directVoltage,
                        breakingCapacity,
                        distanceFromBattery,
                        tripCurve,
                        breaksLoad)
                .that(
                        tripCurve == null || kind == DeviceKind.BREAKER,
                        "tripCurve",
                        tripCurve,
                        "a trip curve only of a breaker")
                .hold();
    }
}
