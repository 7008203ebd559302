package org.leat.pack.alternator;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.CURRENT;
import static org.leat.quantity.QuantityKind.FREQUENCY;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.ROTATIONAL_SPEED;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Frequency;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Place;
import org.leat.design.RegulatorKind;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.RunCapacity;
import org.leat.pack.kit.Runs;
import org.leat.pack.kit.WindingTurns;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.CableDuty;
import org.leat.plant.cases.Running;
import org.leat.plant.duties.SettledWinding;
import org.leat.plant.numbers.CableNumbers;
import org.leat.plant.solved.OperatingPoint.StableSpeed;
import org.leat.quantity.Si;

/** A second speed at which the wheel may run for ever, against every limit on the way. */
final class SecondSpeed {

    static final Rule RULE = Rule.of(
                    "alternator/second-speed", ERROR, "a second speed at which the wheel may run for ever")
            .why(
                    "Where the alternator's torque falls faster than the wheel's, the two meet a second time, far above the working"
                            + " speed. After a lost load, a battery joined to a running wheel, a wet day, it stays there: with other"
                            + " amperes, other heat, another frequency than those the plant was chosen by.")
            .formula(
                    "at each further stable crossing of the torques: lead current ≤ winding's limit, direct current ≤ bridge and"
                            + " regulator, currents ≤ cables as laid, speed and frequency ≤ limits, settled temperature ≤ class of the insulation")
            .judged("running, each nozzle set on hand, each stable speed but the first")
            .source("three-mode bridge model, held against circuit simulation")
            .source(COMMON_PRACTICE)
            .passes("one-speed", "There is one speed at which it can run.")
            .passes(
                    "winding-carries",
                    "It can also run at {speed:rpm}, with {direct} direct and {power}: each lead carries {value} there.")
            .fails(
                    "winding-overloaded",
                    "It can also run at {speed:rpm}, with {direct} direct and {power}: each lead carries {value} there, the winding"
                            + " stands {limit}.")
            .passes("bridge-carries", "At {speed:rpm}, where it can also run, the bridge carries {value}.")
            .fails(
                    "bridge-overloaded",
                    "At {speed:rpm}, where it can also run, the bridge carries {value} and is made for {limit}.")
            .passes("regulator-carries", "At {speed:rpm}, where it can also run, the regulator carries {value}.")
            .fails(
                    "regulator-overloaded",
                    "At {speed:rpm}, where it can also run, the regulator carries {value} and is made for {limit}.")
            .passes("cable-carries", "At {speed:rpm}, where it can also run, the run {run} carries {value}.")
            .fails(
                    "cable-overloaded",
                    "At {speed:rpm}, where it can also run, the run {run} carries {value}; as laid it may carry {limit}.")
            .passes("slow-enough", "The fastest of its speeds is {value}.")
            .fails("too-fast", "It can also run at {value} for ever; the alternator stands {limit}.")
            .passes("low-frequency", "At {speed:rpm}, where it can also run, the frequency is {value}.")
            .fails(
                    "high-frequency",
                    "At {speed:rpm}, where it can also run, the frequency is {value}; the laminations are made for {limit}.")
            .passes("cool-enough", "At {speed:rpm}, where it can also run, the winding settles at {value}.")
            .fails(
                    "too-hot",
                    "At {speed:rpm}, where it can also run, the winding settles at {value}; its insulation stands {limit}.")
            .fails(
                    "burns",
                    "At {speed:rpm}, where it can also run, the winding warms faster than it can cool, and burns.")
            .judgeAll(SecondSpeed::judge)
            .leastWayOut("smaller-nozzle", NozzlesOnHand.NONE_LARGER, NozzlesOnHand::smaller)
            .leastWayOut("other-turns", WindingTurns.WITH_WHEEL, WindingTurns::fewerWithWheel, WindingTurns::more)
            .leastWayOut("fewer-turns", WindingTurns.ALONE, WindingTurns::fewer)
            .build();

    private SecondSpeed() {}

    /** A further speed on a nozzle set. */
    private record FurtherSpeed(Running running, StableSpeed speed) {
        private Spot spot(Judgement j, String path) {
            return j.at(path)
                    .during(running)
                    .with("speed", speed.speed(), ROTATIONAL_SPEED)
                    .with("direct", speed.directCurrent(), CURRENT)
                    .with("power", speed.directPower(), POWER);
        }
    }

    private static List<Outcome> judge(Judgement j) {
        List<FurtherSpeed> all = new ArrayList<>();
        for (Running running : j.solved().running()) {
            running.operatingPoint().otherSpeeds().forEach(speed -> all.add(new FurtherSpeed(running, speed)));
        }
        if (all.isEmpty()) {
            return List.of(j.at("/alternator").says("one-speed"));
        }
        FurtherSpeed most = most(all, StableSpeed::phaseCurrent);
        FurtherSpeed mostDirect = most(all, StableSpeed::directCurrent);
        List<Supplier<Outcome>> questions = new ArrayList<>();
        questions.add(() -> winding(j, most));
        questions.add(() -> bridge(j, mostDirect));
        RegulatorKind kind = j.numbers().regulator().kind();
        if (kind == RegulatorKind.SERIES || kind == RegulatorKind.SHUNT) {
            questions.add(() -> regulator(j, mostDirect));
        }
        questions.add(() -> speed(j, most(all, StableSpeed::alternatorSpeed)));
        Quantity<Frequency> frequencyLimit = j.design().alternator().frequencyLimit();
        if (frequencyLimit != null) {
            questions.add(() -> frequency(j, most(all, StableSpeed::frequency), Si.of(frequencyLimit)));
        }
        if (j.design().alternator().insulationClass() != null
                && j.design().alternator().thermalResistance() != null) {
            questions.add(() -> heat(j, most(all, StableSpeed::copperLoss)));
        }
        for (CableNumbers cable : j.numbers().cables()) {
            if (cable.joins(Place.ALTERNATOR)) {
                questions.add(() -> cable(j, cable, most, most.speed().phaseCurrent()));
            } else if (carriesAll(cable, kind)) {
                questions.add(
                        () -> cable(j, cable, mostDirect, mostDirect.speed().directCurrent()));
            }
        }
        return j.all(questions);
    }

    private static FurtherSpeed most(List<FurtherSpeed> all, ToDoubleFunction<StableSpeed> value) {
        return Worst.most(all, fast -> value.applyAsDouble(fast.speed()));
    }

    /** Behind a tracking regulator the current is its own. */
    private static boolean carriesAll(CableNumbers cable, RegulatorKind kind) {
        boolean main = cable.joins(Place.RECTIFIER, Place.REGULATOR) || cable.joins(Place.RECTIFIER, Place.BATTERY);
        return main || (cable.joins(Place.REGULATOR, Place.BATTERY) && kind != RegulatorKind.TRACKING);
    }

    private static Outcome winding(Judgement j, FurtherSpeed fast) {
        return fast.spot(j, "/alternator/current-limit")
                .saying("winding-carries", "winding-overloaded")
                .atMost(fast.speed().phaseCurrent(), j.numbers().alternator().currentLimit(), CURRENT);
    }

    private static Outcome bridge(Judgement j, FurtherSpeed fast) {
        return fast.spot(j, "/rectifier/average-current")
                .saying("bridge-carries", "bridge-overloaded")
                .atMost(fast.speed().directCurrent(), j.numbers().rectifier().averageCurrentRating(), CURRENT);
    }

    private static Outcome regulator(Judgement j, FurtherSpeed fast) {
        return fast.spot(j, "/regulator/current-rating")
                .saying("regulator-carries", "regulator-overloaded")
                .atMost(fast.speed().directCurrent(), j.numbers().regulator().currentRating(), CURRENT);
    }

    private static Outcome speed(Judgement j, FurtherSpeed fast) {
        return fast.spot(j, "/alternator/speed-limit")
                .saying("slow-enough", "too-fast")
                .atMost(fast.speed().alternatorSpeed(), j.numbers().alternator().speedLimit(), ROTATIONAL_SPEED);
    }

    private static Outcome frequency(Judgement j, FurtherSpeed fast, double limit) {
        return fast.spot(j, "/alternator/frequency-limit")
                .as(NOTE)
                .saying("low-frequency", "high-frequency")
                .atMost(fast.speed().frequency(), limit, FREQUENCY);
    }

    private static Outcome heat(Judgement j, FurtherSpeed fast) {
        Spot spot = fast.spot(j, "/alternator/insulation-class");
        OptionalDouble kelvin = SettledWinding.under(
                j.numbers(),
                fast.running().operatingPoint().windingTemperature(),
                fast.speed().idleLoss(),
                fast.speed().copperLoss(),
                spot.si(
                        "/alternator/thermal-resistance",
                        j.design().alternator().thermalResistance()));
        double limit = SettledWinding.limit(spot.given(j.design().alternator().insulationClass()));
        return SettledWinding.burns(kelvin)
                ? spot.says("burns")
                : spot.saying("cool-enough", "too-hot").atMost(kelvin.getAsDouble(), limit, TEMPERATURE);
    }

    private static Outcome cable(Judgement j, CableNumbers cable, FurtherSpeed fast, double current) {
        Spot spot = fast.spot(j, cable.path() + "/conductor/area").with(Runs.arg("run", j.design(), cable));
        CableDuty.Carries carries = new CableDuty.Carries(
                cable, current, cable.joins(Place.ALTERNATOR), fast.running().id());
        return spot.saying("cable-carries", "cable-overloaded")
                .atMost(current, RunCapacity.capacity(j, spot, carries), CURRENT);
    }
}
