package org.leat.pack;

import java.util.List;
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
import org.leat.plant.solve.OperatingPoint;
import org.leat.quantity.QuantityKind;

/** Electrical efficiency of the alternator where it works. */
final class AlternatorLoadedEfficiency implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("alternator/loaded-efficiency", Level.WARNING)
            .title("electrical efficiency of the alternator where it works")
            .why(
                    "A motor made for more volts than the battery has must push all its power through its winding as current:"
                            + " half of the stream may end as heat in the copper.")
            .formula("power at the terminals / power at the shaft ≥ limit")
            .judged("running on the nozzles open as built")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("least", QuantityKind.RATIO, 60, "%", RuleCard.COMMON_PRACTICE)
            .message("good", "copper", "iron")
            .message("poor", "copper", "iron")
            .message("other-turns", "turns", "diameter")
            .message("no-current")
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
        Spot spot = j.at("/alternator").during(running.id());
        if (running.operatingPoint().hold() == OperatingPoint.Hold.BELOW_CUT_IN) {
            return List.of(spot.notApplicable("no-current"));
        }
        EnergyAccount energy = running.operatingPoint().energy();
        return List.of(spot.compare(
                Comparison.atLeast(
                        energy.at(EnergyAccount.Stage.TERMINALS) / energy.at(EnergyAccount.Stage.SHAFT),
                        j.limit("least")),
                "good",
                "poor",
                Arg.of("copper", energy.lostBefore(EnergyAccount.Stage.TERMINALS), QuantityKind.POWER),
                Arg.of("iron", energy.lostBefore(EnergyAccount.Stage.AIR_GAP), QuantityKind.POWER)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return OtherTurns.any(this, j, failure, "other-turns").map(List::of).orElse(List.of());
    }
}
