package org.leat.pack.alternator;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.WindingTurns;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.EnergyAccount;
import org.leat.plant.solved.EnergyAccount.Stage;

/** Electrical efficiency of the alternator where it works. */
final class LoadedEfficiency {

    static final Rule RULE = Rule.of(
                    "alternator/loaded-efficiency", WARNING, "electrical efficiency of the alternator where it works")
            .why(
                    "A motor made for more volts than the battery has must push all its power through its winding as current:"
                            + " half of the stream may end as heat in the copper.")
            .formula("power at the terminals / power at the shaft ≥ limit")
            .judged("running on the nozzles open as built")
            .source(COMMON_PRACTICE)
            .limit("least", RATIO, 60, "%", COMMON_PRACTICE)
            .passes(
                    "good",
                    "The alternator turns {value} of the shaft's power into electricity ({copper} lost in copper, {iron} in iron"
                            + " and friction).")
            .fails(
                    "poor",
                    "The alternator turns only {value} of the shaft's power into electricity ({copper} lost in copper, {iron} in"
                            + " iron and friction); good is {limit}.")
            .notApplicable("no-current", "Not judged: the bus voltage is not reached, no current flows.")
            .judge(LoadedEfficiency::judge)
            .leastWayOut("other-turns", WindingTurns.WITH_WHEEL, WindingTurns::fewerWithWheel, WindingTurns::more)
            .build();

    private LoadedEfficiency() {}

    private static Outcome judge(Judgement j) {
        Running running = j.solved().running().get(0);
        Spot spot = j.at("/alternator").during(running);
        if (!running.operatingPoint().loaded()) {
            return spot.says("no-current");
        }
        EnergyAccount energy = running.operatingPoint().energy();
        return spot.with("copper", energy.lostBefore(Stage.TERMINALS), POWER)
                .with("iron", energy.lostBefore(Stage.AIR_GAP), POWER)
                .atLeast(energy.at(Stage.TERMINALS) / energy.at(Stage.SHAFT), j.limit("least"));
    }
}
