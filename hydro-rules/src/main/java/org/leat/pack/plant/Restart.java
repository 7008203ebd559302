package org.leat.pack.plant;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.RegulatorKind;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.WindingTurns;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.LoadLost;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.solved.OperatingPoint;

/** Whether the plant comes back on a flat battery. */
final class Restart {

    static final Rule RULE = Rule.of("plant/restart", WARNING, "whether the plant comes back on a flat battery")
            .why(
                    "After days with a blocked intake the battery is flat when the water returns, and nobody is there. On a low"
                            + " bus the alternator pushes more current and holds less torque.")
            .formula(
                    "greatest alternator torque on the bus of an empty battery / runner torque at the same speed ≥ limit")
            .judged(
                    "running on each nozzle set that charges, battery at the voltage at which loads are shed; the set on which the"
                            + " alternator holds least")
            .source("three-mode bridge model, held against circuit simulation")
            .source(COMMON_PRACTICE)
            .limit("least", RATIO, 1.1, "", COMMON_PRACTICE)
            .passes(
                    "comes-back",
                    "On a flat battery the plant comes back with {power}; the alternator can make {value} times the torque of"
                            + " the runner.")
            .passes(
                    "comes-back-freely",
                    "On a flat battery the plant comes back with {power}; at the alternator's greatest torque the runner no"
                            + " longer pushes.")
            .fails(
                    "slips",
                    "On a flat battery the alternator can make only {value} times the torque of the runner on {set} (safe is"
                            + " {limit}): the wheel slips away.")
            .fails(
                    "asleep",
                    "On a flat battery no current flows: the turbine does not reach the voltage that the bus asks. The plant does not"
                            + " come back by itself.")
            .fails(
                    "does-not-start",
                    "On a flat battery no current flows: the jet is too weak to start the wheel. The plant does not come back by"
                            + " itself.")
            .judge(Restart::judge)
            .leastWayOut(
                    "smaller-nozzle", NozzlesOnHand.NONE_LARGER, ChangesForText.only("slips", NozzlesOnHand::smaller))
            .leastWayOut(
                    "other-turns",
                    WindingTurns.WITH_WHEEL,
                    ChangesForText.only("slips", WindingTurns::fewerWithWheel),
                    ChangesForText.only("slips", WindingTurns::more))
            .wayOut("more-turns", WindingTurns.ALONE, ChangesForText.only("asleep", Restart::moreTurns))
            .advice(
                    "more-volts",
                    "A machine, or a wheel and jet, that bring more than {asked} behind the bridge with nothing connected; these"
                            + " bring {made}.",
                    ChangesForText.only("asleep", Restart::moreVolts))
            .advice(
                    "lower-window",
                    "A regulator whose window begins below {made}, what the turbine brings with nothing connected.",
                    ChangesForText.only("asleep", Restart::lowerWindow))
            .advice(
                    "more-push",
                    "A larger nozzle or one jet more, or a machine that is easier to turn.",
                    ChangesForText.only("does-not-start", Change.advice()))
            .build();

    /** V that a tracking regulator asks above its battery: common practice. */
    private static final double HEADROOM = 2;

    /** Voltage with nothing connected over the one at which the wheel gives most of its power: common practice. */
    private static final double BELOW_RUNAWAY = 1.5;

    private Restart() {}

    private static Outcome judge(Judgement j) {
        List<FlatBatteryStart> all = j.solved().running().stream()
                .filter(running ->
                        running.nozzles().asBuilt() || running.operatingPoint().loaded())
                .map(running -> FlatBatteryStart.of(j, running.nozzles()))
                .toList();
        Spot spot = j.at("/battery").during("battery-flat");
        Optional<FlatBatteryStart> asleep =
                all.stream().filter(back -> !back.flat().loaded()).findFirst();
        if (asleep.isPresent()) {
            return spot.says(
                    asleep.get().flat().hold() == OperatingPoint.Hold.DOES_NOT_START ? "does-not-start" : "asleep");
        }
        FlatBatteryStart worst = Worst.most(all, back -> back.flat().peak().runnerShare());
        Spot told = spot.with("power", worst.flat().batteryPower(), POWER)
                .with(Arg.of("set", worst.nozzles().name()));
        OptionalDouble over = worst.flat().peak().overRunner();
        return over.isEmpty() ? told.says("comes-back-freely") : told.atLeast(over.getAsDouble(), j.limit("least"));
    }

    /** So many that the voltage comes well below the runaway, where the wheel gives power. */
    private static Stream<Change> moreTurns(Judgement j, Outcome.Fail failure) {
        return WindingTurns.moreAlone(j, BELOW_RUNAWAY * asked(j) / made(j));
    }

    /** What the bus asks and the turbine does not reach: nothing in the regulator helps there. */
    private static Stream<Change> moreVolts(Judgement j, Outcome.Fail failure) {
        double asked = asked(j);
        double made = made(j);
        return made < asked
                ? Stream.of(Change.advice().with("asked", asked, VOLTAGE).with("made", made, VOLTAGE))
                : Stream.empty();
    }

    /** Where the window is what keeps it from charging, and not the battery. */
    private static Stream<Change> lowerWindow(Judgement j, Outcome.Fail failure) {
        double made = made(j);
        return tracks(j)
                        && made < j.numbers().regulator().windowFrom()
                        && made > j.numbers().battery().absorptionVoltage() + HEADROOM
                ? Stream.of(Change.advice().with("made", made, VOLTAGE))
                : Stream.empty();
    }

    private static double asked(Judgement j) {
        return tracks(j)
                ? j.numbers().regulator().windowFrom()
                : FlatBatteryStart.of(j, j.solved().running().get(0).nozzles())
                        .flat()
                        .bus()
                        .bridge();
    }

    private static boolean tracks(Judgement j) {
        return j.numbers().regulator().kind() == RegulatorKind.TRACKING;
    }

    private static double made(Judgement j) {
        return Worst.most(j.solved().loadLost(), LoadLost::directVoltage).directVoltage();
    }

    /** One nozzle set on a flat battery. */
    private record FlatBatteryStart(NozzleGroup nozzles, OperatingPoint flat) {

        static FlatBatteryStart of(Judgement j, NozzleGroup nozzles) {
            return new FlatBatteryStart(
                    nozzles,
                    j.plant()
                            .withBattery(j.numbers().battery().flat())
                            .running(nozzles)
                            .operatingPoint());
        }
    }
}
