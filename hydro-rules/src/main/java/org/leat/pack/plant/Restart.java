package org.leat.pack.plant;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.OtherTurns;
import org.leat.pack.kit.Said;
import org.leat.pack.kit.Worst;
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
            .fails("asleep", "On a flat battery no current flows: the plant does not come back by itself.")
            .judge(Restart::judge)
            .leastWayOut("smaller-nozzle", NozzlesOnHand.NONE_LARGER, Said.only("slips", NozzlesOnHand::smaller))
            .leastWayOut(
                    "other-turns",
                    OtherTurns.WITH_WHEEL,
                    Said.only("slips", OtherTurns::fewerWithWheel),
                    Said.only("slips", OtherTurns::more))
            .advice(
                    "wake",
                    "A regulator that wakes by the turbine's voltage.",
                    Said.only("asleep", (j, failure) -> Stream.of(Change.advice())))
            .build();

    private Restart() {}

    private static Outcome judge(Judgement j) {
        List<Back> all = j.solved().running().stream()
                .filter(running ->
                        running.nozzles().asBuilt() || running.operatingPoint().loaded())
                .map(running -> Back.of(j, running.nozzles()))
                .toList();
        Spot spot = j.at("/battery").during("battery-flat");
        if (all.stream().anyMatch(back -> !back.flat().loaded())) {
            return spot.says("asleep");
        }
        Back worst = Worst.most(all, back -> back.flat().peak().runnerShare());
        Spot told = spot.with("power", worst.flat().batteryPower(), POWER)
                .with(Arg.of("set", worst.nozzles().name()));
        OptionalDouble over = worst.flat().peak().overRunner();
        return over.isEmpty() ? told.says("comes-back-freely") : told.atLeast(over.getAsDouble(), j.limit("least"));
    }

    /** One nozzle set on a flat battery. */
    private record Back(NozzleGroup nozzles, OperatingPoint flat) {

        static Back of(Judgement j, NozzleGroup nozzles) {
            return new Back(
                    nozzles,
                    j.plant()
                            .withBattery(j.numbers().battery().flat())
                            .running(nozzles)
                            .operatingPoint());
        }
    }
}
