package org.leat.pack.plant;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.EnergyAccount;
import org.leat.plant.solved.EnergyAccount.Stage;

/** From the water to the battery, stage by stage. */
final class EfficiencyChain {

    static final Rule RULE = Rule.of("plant/efficiency-chain", NOTE, "from the water to the battery, stage by stage")
            .why("Each stage takes its share, and the weakest decides where money is best spent.")
            .formula(
                    "power at the battery / power of the water over the gross head ≥ limit; the stage that loses most is"
                            + " named")
            .judged("running on the nozzles open as built")
            .source("energy balance")
            .source(COMMON_PRACTICE)
            .limit("least", RATIO, 30, "%", COMMON_PRACTICE)
            .passes("good", "Of the water's power {value} reach the battery; most is lost {stage} ({lost}).")
            .fails("poor", "Of the water's power only {value} reach the battery; most is lost {stage} ({lost}).")
            .judge(EfficiencyChain::judge)
            .advice(
                    "look-at",
                    "Begin with what is lost {stage}.",
                    (j, failure) -> Stream.of(Change.advice().with(stage(weakest(j)))))
            .build();

    private EfficiencyChain() {}

    private static Outcome judge(Judgement j) {
        Running running = j.solved().running().get(0);
        EnergyAccount energy = running.operatingPoint().energy();
        Spot spot = j.at("/").during(running);
        double water = energy.at(Stage.WATER);
        if (!(water > 0)) {
            return spot.notGiven("/nozzles/open");
        }
        EnergyAccount.Entry weakest = weakest(j);
        return spot.with(stage(weakest))
                .with("lost", weakest.lost(), POWER)
                .atLeast(energy.at(Stage.BATTERY) / water, j.limit("least"));
    }

    private static EnergyAccount.Entry weakest(Judgement j) {
        return Worst.most(j.solved().running().get(0).operatingPoint().energy().entries(), EnergyAccount.Entry::lost);
    }

    private static Arg stage(EnergyAccount.Entry entry) {
        return Arg.phrase("stage", LossStage.of(entry.stage()));
    }
}
