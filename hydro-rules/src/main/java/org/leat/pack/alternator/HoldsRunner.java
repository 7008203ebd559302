package org.leat.pack.alternator;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.ROTATIONAL_SPEED;
import static org.leat.quantity.QuantityKind.TORQUE;

import java.util.List;
import java.util.OptionalDouble;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.WindingTurns;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.OperatingPoint;

/** Whether the alternator holds the runner. */
final class HoldsRunner {

    static final Rule RULE = Rule.of("alternator/holds-runner", ERROR, "whether the alternator holds the runner")
            .why(
                    "The torque of a permanent-magnet alternator on a battery rises with speed to a maximum and then falls. If"
                            + " the runner turns harder than that maximum, it speeds up to near its runaway speed although the"
                            + " battery is connected.")
            .formula("greatest alternator torque on this bus / runner torque at the same speed")
            .judged("running, the nozzle set that leaves the least margin")
            .source(
                    "three-mode bridge model, held against circuit simulation; short-circuit torque limit 1.5 p ψ²/(2L):"
                            + " machine textbooks")
            .source(COMMON_PRACTICE)
            .limit("least", RATIO, 1.1, "", COMMON_PRACTICE, HIGHER)
            .passes("holds", "The alternator can make {value} times the torque of the runner at that speed.")
            .passes(
                    "no-push",
                    "At the speed of the alternator's greatest torque on this bus the runner no longer pushes.")
            .fails(
                    "not-held",
                    "The alternator can make {torque} at most on this bus, the runner turns with {runner} at the same speed"
                            + " ({value} times; safe is {limit}): it runs at {speed:rpm}.")
            .notApplicable("below-cut-in", "Not judged: the bus voltage is not reached, no current flows.")
            .judge(HoldsRunner::judge)
            .leastWayOut("smaller-nozzle", NozzlesOnHand.NONE_LARGER, NozzlesOnHand::smaller)
            .leastWayOut("other-turns", WindingTurns.WITH_WHEEL, WindingTurns::fewerWithWheel, WindingTurns::more)
            .build();

    private HoldsRunner() {}

    private static Outcome judge(Judgement j) {
        List<Running> all = j.solved().running();
        List<Running> loaded =
                all.stream().filter(r -> r.operatingPoint().loaded()).toList();
        if (loaded.isEmpty()) {
            return j.at("/alternator").during(all.get(0)).says("below-cut-in");
        }
        Running worst = Worst.most(loaded, r -> r.operatingPoint().peak().runnerShare());
        OperatingPoint.TorquePeak peak = worst.operatingPoint().peak();
        OptionalDouble over = peak.overRunner();
        if (over.isEmpty()) {
            return j.at("/alternator").during(worst).says("no-push");
        }
        return j.at("/alternator")
                .during(worst)
                .with("torque", peak.torque(), TORQUE)
                .with("runner", peak.runnerTorque(), TORQUE)
                .with("speed", worst.operatingPoint().speed(), ROTATIONAL_SPEED)
                .atLeast(over.getAsDouble(), j.limit("least"));
    }
}
