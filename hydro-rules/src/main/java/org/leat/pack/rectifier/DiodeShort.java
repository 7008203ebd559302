package org.leat.pack.rectifier;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.CURRENT;
import static org.leat.quantity.QuantityKind.ROTATIONAL_SPEED;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import javax.measure.quantity.ElectricCurrent;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Alternator;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BrokenBridge;
import org.leat.plant.duties.SettledWinding;

/** What the winding and the other diodes carry when one diode has failed short. */
final class DiodeShort {

    private static final int DIODES_A_RAIL = 3;

    static final Rule RULE = Rule.of(
                    "rectifier/diode-short", ERROR, "winding and bridge when one diode has failed short")
            .why(
                    "Diodes that die mostly die short. Their phase then lies on the rail, the other two drive current round through the"
                            + " diodes beside it, and the wheel runs on, braked, while winding and bridge carry several times what"
                            + " the battery gets. Nobody sees it until something burns.")
            .formula(
                    "mean square current of the lead that carries most ≤ limit of the winding, settled temperature of a winding of"
                            + " which every phase is as hot as the hottest ≤ class of the insulation, three times the mean of"
                            + " the diode that carries most ≤ average current of the bridge; with a device in the leads that surely"
                            + " opens no current is more than I_2/I_n · I_n")
            .judged(
                    "one diode shorted, each nozzle set on hand, at the speed at which the torques meet, and at any flow between"
                            + " nothing and the full pipe's: where a device in the leads opens at full flow, at the current that"
                            + " just does not open it; the set on which each number is worst")
            .source(
                    "alternator and bridge stepped in time with one diode conducting both ways, held against circuit simulation;"
                            + " I_2/I_n 1.6 of a gG fuse from 16 A, 1.9 above 4 A, 2.1 below, 1.45 of a breaker (IEC 60269-1, IEC"
                            + " 60898-1, from memory)")
            .source(COMMON_PRACTICE)
            .passes(
                    "cleared",
                    "With one diode shorted on {set} a lead carries {value}; {device} surely opens from {opens} on.")
            .passes(
                    "carried",
                    "With one diode shorted on {set} the wheel settles at {speed:rpm} and a lead carries {value}.")
            .fails(
                    "overloaded",
                    "With one diode shorted on {set} the wheel settles at {speed:rpm} and a lead carries {value}; the winding stands"
                            + " {limit}, and nothing in the leads surely opens.")
            .passes("cool-enough", "With one diode shorted on {set} the hottest phase settles at {value}.")
            .fails(
                    "too-hot",
                    "With one diode shorted on {set} the hottest phase settles at {value}; its insulation stands {limit}, and"
                            + " nothing in the leads surely opens.")
            .fails(
                    "burns",
                    "With one diode shorted on {set} the hottest phase warms until it burns, and nothing in the leads surely opens.")
            .passes(
                    "bridge-carries",
                    "With one diode shorted on {set} the bridge carries as much as one of {value} does.")
            .fails(
                    "bridge-overloaded",
                    "With one diode shorted on {set} the diode beside it carries as much as in a bridge of {value}; it is made for"
                            + " {limit}, and nothing in the leads surely opens.")
            .passes(
                    "carried-unopened",
                    "With one diode shorted and the nozzle of {set} partly blocked a lead carries up to {value} before {device} surely"
                            + " opens.")
            .fails(
                    "overloaded-unopened",
                    "With one diode shorted and the nozzle of {set} partly blocked a lead carries up to {value} before {device} surely"
                            + " opens; the winding stands {limit}.")
            .passes(
                    "cool-enough-unopened",
                    "With one diode shorted and the nozzle of {set} partly blocked the hottest phase settles at up to {value} before"
                            + " {device} surely opens.")
            .fails(
                    "too-hot-unopened",
                    "With one diode shorted and the nozzle of {set} partly blocked the hottest phase settles at up to {value} before"
                            + " {device} surely opens; its insulation stands {limit}.")
            .fails(
                    "burns-unopened",
                    "With one diode shorted and the nozzle of {set} partly blocked the hottest phase can warm until it burns before"
                            + " {device} surely opens.")
            .passes(
                    "bridge-carries-unopened",
                    "With one diode shorted and the nozzle of {set} partly blocked the bridge carries as much as one of up to {value}"
                            + " does before {device} surely opens.")
            .fails(
                    "bridge-overloaded-unopened",
                    "With one diode shorted and the nozzle of {set} partly blocked the diode beside it carries as much as in a bridge"
                            + " of up to {value} before {device} surely opens; it is made for {limit}.")
            .notApplicable("no-current", "Not judged: the wheel does not turn.")
            .judgeAll(DiodeShort::judge)
            .leastWayOut("smaller-fuse", "A device of {rating} in each lead.", LeadFuses::smallerDevice)
            .leastWayOut(
                    "fuse",
                    "A fuse of {rating} in each lead between alternator and bridge: it carries what the turbine gives, and"
                            + " opens on a shorted diode.",
                    LeadFuses::newFuse)
            .leastWayOut(
                    "fewer-nozzles",
                    "A device of {rating} in each lead, and of the nozzles only {sets} kept: the others are too much for it.",
                    LeadFuses::fewerNozzles)
            .leastWayOut(
                    "bridge",
                    "A bridge of {rating}.",
                    ChangesForText.only(
                            "bridge-overloaded-unopened",
                            FieldChanges.raised("A", ElectricCurrent.class, 35, 60, 100, 150, 200, 300, 400)))
            .advice(
                    "first-fuse",
                    "A fuse of {rating} in each lead between alternator and bridge: it carries what the turbine gives, and"
                            + " opens on a shorted diode.",
                    LeadFuses::firstFuse)
            .advice(
                    "relay",
                    "An overload relay in the alternator's leads, set to the winding's limit, that drops the deflector.")
            .build();

    private DiodeShort() {}

    private static List<Outcome> judge(Judgement j) {
        List<BrokenBridge> all = j.solved().diodeShorted();
        if (all.isEmpty()) {
            return List.of(j.at("/rectifier").says("no-current"));
        }
        List<Supplier<Outcome>> questions = new ArrayList<>();
        Devices.Placed opening = Devices.firstInLeads(j.design());
        List<SustainedFault> faults =
                all.stream().map(broken -> SustainedFault.of(broken, opening)).toList();
        List<SustainedFault> cleared =
                faults.stream().filter(SustainedFault::opens).toList();
        if (!cleared.isEmpty()) {
            questions.add(
                    () -> cleared(j, Worst.least(cleared, each -> each.broken().phaseCurrent())));
        }
        questions.add(() -> winding(j, Worst.most(faults, SustainedFault::current)));
        Alternator alternator = j.design().alternator();
        if (alternator.thermalResistance() != null && alternator.insulationClass() != null) {
            questions.add(() -> heat(j, faults));
        }
        questions.add(() -> bridge(j, Worst.most(faults, SustainedFault::diodeCurrent)));
        return j.all(questions);
    }

    /**
     * What a set can bring for ever. A partly blocked nozzle, or a stream that no longer fills the pipe, brings any current between
     * nothing and that of the full flow, and from full flow down the others fall with it: so no more than just does not open a device
     * in the leads, with a diode's share of it as at full flow, which falls too.
     */
    private record SustainedFault(BrokenBridge broken, Devices.@Nullable Placed device, double current) {

        static SustainedFault of(BrokenBridge broken, Devices.@Nullable Placed device) {
            boolean opens = device != null && broken.phaseCurrent() >= device.surelyOpens();
            return new SustainedFault(
                    broken, device, opens ? Objects.requireNonNull(device).surelyOpens() : broken.phaseCurrent());
        }

        boolean opens() {
            return current < broken.phaseCurrent();
        }

        double diodeCurrent() {
            return broken.phaseCurrent() > 0 ? broken.diodeCurrent() * current / broken.phaseCurrent() : 0;
        }
    }

    private static Outcome cleared(Judgement j, SustainedFault fault) {
        Devices.Placed device = Objects.requireNonNull(fault.device());
        return spot(j, device.ratingPath(), fault.broken())
                .saying("cleared", "overloaded")
                .with(device.name())
                .with("opens", device.surelyOpens(), CURRENT)
                .atLeast(fault.broken().phaseCurrent(), device.surelyOpens(), CURRENT);
    }

    private static Spot spot(Judgement j, String path, BrokenBridge broken) {
        return j.at(path)
                .during(broken)
                .with(Arg.of("set", broken.nozzles().name()))
                .with("speed", broken.runnerSpeed(), ROTATIONAL_SPEED);
    }

    private static Spot spot(Judgement j, String path, SustainedFault fault) {
        Devices.Placed device = fault.device();
        Spot spot = spot(j, path, fault.broken());
        return fault.opens() && device != null ? spot.with(device.name()) : spot;
    }

    private static Spot saying(Spot spot, SustainedFault fault, String passes, String fails) {
        return fault.opens() ? spot.saying(passes + "-unopened", fails + "-unopened") : spot.saying(passes, fails);
    }

    private static Outcome winding(Judgement j, SustainedFault fault) {
        return saying(spot(j, "/alternator/current-limit", fault), fault, "carried", "overloaded")
                .atMost(fault.current(), j.numbers().alternator().currentLimit(), CURRENT);
    }

    private static Outcome heat(Judgement j, List<SustainedFault> all) {
        Alternator stated = j.design().alternator();
        double resistance = j.at("/alternator/thermal-resistance").si(stated.thermalResistance());
        SustainedFault hottest = Worst.last(all, fault -> settled(j, fault, resistance), SettledWinding.coolestFirst());
        Spot spot = saying(spot(j, "/alternator/insulation-class", hottest), hottest, "cool-enough", "too-hot");
        double limit = SettledWinding.limit(spot.given(stated.insulationClass()));
        OptionalDouble settled = settled(j, hottest, resistance);
        return SettledWinding.burns(settled)
                ? spot.says(hottest.opens() ? "burns-unopened" : "burns")
                : spot.atMost(settled.getAsDouble(), limit, TEMPERATURE);
    }

    private static OptionalDouble settled(Judgement j, SustainedFault fault, double resistance) {
        return SettledWinding.behind(j.solved(), fault.broken(), fault.current(), resistance);
    }

    private static Outcome bridge(Judgement j, SustainedFault fault) {
        return saying(spot(j, "/rectifier/average-current", fault), fault, "bridge-carries", "bridge-overloaded")
                .atMost(
                        DIODES_A_RAIL * fault.diodeCurrent(),
                        j.numbers().rectifier().averageCurrentRating(),
                        CURRENT);
    }
}
