package org.leat.pack;

import java.util.List;
import java.util.Locale;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.plant.cases.Running;
import org.leat.plant.solve.EnergyAccount;
import org.leat.quantity.QuantityKind;

/** From the water to the battery, stage by stage. */
final class PlantEfficiencyChain implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("plant/efficiency-chain", Level.NOTE)
            .title("from the water to the battery, stage by stage")
            .why("Each stage takes its share, and the weakest decides where money is best spent.")
            .formula(
                    "power at the battery / power of the water over the gross head ≥ limit; the stage that loses most is named")
            .judged("running on the nozzles open as built")
            .source("energy balance")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("least", QuantityKind.RATIO, 30, "%", RuleCard.COMMON_PRACTICE)
            .message("good", "stage", "lost")
            .message("poor", "stage", "lost")
            .message("look-at", "stage")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Running running = j.cases().running().get(0);
        EnergyAccount energy = running.operatingPoint().energy();
        Spot spot = j.at("/").during(running.id());
        double water = energy.at(EnergyAccount.Stage.WATER);
        EnergyAccount.Entry weakest = weakest(energy);
        return List.of(
                water > 0
                        ? spot.compare(
                                Comparison.atLeast(energy.at(EnergyAccount.Stage.BATTERY) / water, j.limit("least")),
                                "good",
                                "poor",
                                stage(weakest),
                                Arg.of("lost", weakest.lost(), QuantityKind.POWER))
                        : spot.notGiven("/nozzles/open"));
    }

    private static EnergyAccount.Entry weakest(EnergyAccount energy) {
        return Worst.most(energy.entries(), EnergyAccount.Entry::lost);
    }

    private static Arg stage(EnergyAccount.Entry entry) {
        return Arg.phrase(
                "stage",
                "stage." + entry.stage().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        EnergyAccount energy = j.cases().running().get(0).operatingPoint().energy();
        return List.of(j.advice("look-at", stage(weakest(energy))));
    }
}
