package org.leat.design;

import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** A fuse, breaker or switch. */
@API(status = API.Status.STABLE, since = "0.1")
@About("A fuse, breaker or switch")
@Sample("{ name: main fuse, kind: fuse, from: regulator, to: battery, rated-current: 40 A }")
public record ProtectiveDevice(
        @About("what to call it") String name,
        @About("what it is") DeviceKind kind,
        @About("the run it sits in begins here") Place from,
        @About("and ends here") Place to,
        @About("as marked") @Limits(above = 0) Quantity<ElectricCurrent> ratedCurrent,

        @About("that it can break") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricPotential> directVoltage,

        @About("for direct current") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<ElectricCurrent> breakingCapacity,

        @About("along the cable") @Limits(atLeast = 0) @CanBeAbsent @Nullable
        Quantity<Length> distanceFromBattery,

        @About("of a breaker") @Fact @CanBeAbsent @Nullable TripCurve tripCurve,

        @About(
                "of a fuse: whether it breaks every current that melts it, as gG, gPV and classes J and T do; one for back-up alone, aM or aR, does not")
        @Fact
        @CanBeAbsent
        @Nullable
        Boolean fullRange,

        @About("whether a switch may be opened while current flows") @Fact @CanBeAbsent @Nullable
        Boolean breaksLoad,

        @About(
                "of a breaker: whether it breaks only a current that flows one way, as its terminals marked plus and minus say")
        @Fact
        @CanBeAbsent
        @Nullable
        Boolean polarised,

        @About("whether it is listed to carry all of its rating for ever, in the housing it sits in")
        @Fact
        @CanBeAbsent
        @Nullable
        Boolean listedAtFullLoad,

        @About("of alternating current that its maker names") @Fact @Limits(above = 0) @CanBeAbsent @Nullable
        Quantity<Frequency> highestFrequency) {

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
                        fullRange,
                        breaksLoad,
                        polarised,
                        listedAtFullLoad,
                        highestFrequency)
                .that(
                        tripCurve == null || kind == DeviceKind.BREAKER,
                        "tripCurve",
                        tripCurve,
                        "a trip curve only of a breaker")
                .hold();
    }
}
