package org.leat.pack.protection;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.quantity.Quantities.amps;
import static org.leat.quantity.QuantityKind.CURRENT;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Cable;
import org.leat.pack.kit.Conductors;
import org.leat.pack.kit.DeviceSizes;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.RunCapacity;
import org.leat.plant.cases.CableDuty;
import org.leat.plant.loads.DeviceRatings;
import org.leat.plant.numbers.CableNumbers;

/** Fuses and breakers that carry the turbine's current day and night. */
final class ContinuousCurrent {

    static final Rule RULE = Rule.of(
                    "protection/continuous-load",
                    WARNING,
                    "fuses and breakers that carry the turbine's current day and night")
            .canFailAs(ERROR)
            .why(
                    "A stream never stops. A fuse or breaker at nearly its rating, in a box with others, ages and opens one"
                            + " day for no fault at all, and lets the turbine go.")
            .formula("I_n ≥ factor · I_B; I_n ≥ I_B where it is listed for all of its rating")
            .judged(
                    "running on the nozzle set with most current; an error where what is left joined to the turbine does not"
                            + " stand that the device opens")
            .source(
                    "NEC 210.20(A) and 215.3: loads of three hours and more (read in a maker's bulletin); IEC 60364 has no"
                            + " such rule")
            .limit("factor", RATIO, 1.25, "", "NEC 210.20(A) and 215.3", HIGHER)
            .either("room", "tired", "{device} of {value} carries {current} day and night; that takes {limit}.")
            .fails(
                    "lets-go",
                    "{device} of {value} carries {current} day and night; that takes {limit}, and when it opens more voltage"
                            + " follows than what is joined to the turbine stands.")
            .open("no-run", "Cannot be judged: {device} sits in no run that the design names.")
            .notApplicable("none", "Not judged: no fuse or breaker carries the turbine's current.")
            .judgeAll(ContinuousCurrent::judge)
            .wayOut("larger", "A device of {rating}.", DeviceSizes::larger)
            .wayOut("thicker", "A device of {rating}, and conductors of {area:mm²}.", ContinuousCurrent::thicker)
            .build();

    private ContinuousCurrent() {}

    private static List<Outcome> judge(Judgement j) {
        // the dump load's branch has a rule of its own
        return Devices.each(
                j, device -> device.opens() && device.carriesTheCharge(), "none", device -> judge(j, device));
    }

    private static Outcome judge(Judgement j, Devices.Placed device) {
        Spot at = j.at(device.ratingPath());
        CableDuty duty = j.solved().cableDuties().stream()
                .filter(d -> device.sitsIn(cable(j, d.cable())))
                .findFirst()
                .orElse(null);
        if (duty == null) {
            return at.with(device.name()).open("/cables", "no-run");
        }
        CableDuty.Carries carries = RunCapacity.carries(at, duty);
        boolean listed = Boolean.TRUE.equals(device.device().listedAtFullLoad());
        double least = (listed ? 1 : j.limit("factor").value()) * carries.current();
        boolean lost = TurbineNotFusedOpen.breaksSomething(j, device);
        return at.during(carries.during())
                .as(lost ? ERROR : WARNING)
                .saying("room", lost ? "lets-go" : "tired")
                .with(device.name())
                .with("current", carries.current(), CURRENT)
                .atLeast(device.rating(), least, CURRENT);
    }

    private static Stream<Change> thicker(Judgement j, Outcome.Fail failure) {
        Devices.Placed device = Devices.at(j.design(), failure.path());
        return DeviceSizes.from(failure.limit())
                .limit(1)
                .flatMap(rating -> j.solved().cableDuties().stream()
                        .filter(duty -> device.sitsIn(cable(j, duty.cable())) && burns(j, duty, device, rating))
                        .flatMap(duty -> Conductors.thicker(j.design(), duty.cable()))
                        .map(change -> change.and(failure.path(), amps(rating)).with("rating", rating, CURRENT)));
    }

    /** Whether a device of a rating would not protect the cable as it is. */
    private static boolean burns(Judgement j, CableDuty duty, Devices.Placed device, double rating) {
        Spot spot = j.at(device.path());
        // what is not known of the cable does not burn it
        return j.answered(
                () -> {
                    double capacity = RunCapacity.capacity(j, spot, RunCapacity.carries(spot, duty));
                    return DeviceRatings.greatestProtecting(device.device().kind(), rating, capacity) < rating;
                },
                open -> false);
    }

    private static Cable cable(Judgement j, CableNumbers run) {
        return j.design().cables().get(run.index());
    }
}
