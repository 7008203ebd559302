package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;

/** Whether the bus is reached with little water. */
final class AlternatorCutIn implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("alternator/cut-in", Level.WARNING)
            .title("whether the bus is reached with little water")
            .why(
                    "No current flows until the alternator turns fast enough for its peak voltage to pass the battery and two diodes. With the smallest nozzle or in the dry season that speed may never come.")
            .formula(
                    "battery power with the least water ≥ share · battery power as built; nothing flows while √2 E_LL < V_dc + 2 V_F")
            .judged("each nozzle set on hand and each flow of the stream, the one that gives least")
            .source(
                    "conduction of a three-phase bridge on a battery: begins at √2 E_LL = V_dc + 2 V_F (circuit simulation)")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("least-share", QuantityKind.RATIO, 20, "%", RuleCard.COMMON_PRACTICE)
            .message("reached", "power", "speed")
            .message("not-reached", "power", "speed")
            .message("smaller-nozzle", "bore")
            .message("more-turns", "turns", "diameter")
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
        List<Running> all = new ArrayList<>(j.cases().running());
        all.addAll(j.cases().overTheYear());
        double rated = all.get(0).operatingPoint().batteryPower();
        Running least = Worst.least(all, running -> running.operatingPoint().batteryPower());
        double asked = j.limit("least-share").value() * rated;
        Comparison comparison =
                Comparison.atLeast(least.operatingPoint().batteryPower(), Math.max(asked, 1), QuantityKind.POWER);
        return List.of(j.at("/alternator/open-circuit")
                .during(least.id())
                .compare(
                        comparison,
                        "reached",
                        "not-reached",
                        Arg.of("power", least.operatingPoint().batteryPower(), QuantityKind.POWER),
                        Arg.of("speed", least.operatingPoint().speed(), QuantityKind.ROTATIONAL_SPEED)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        Search.least(this, j, failure, NozzlesOnHand.smaller(j, "smaller-nozzle"))
                .ifPresent(ways::add);
        Search.least(this, j, failure, OtherTurns.more(j, "more-turns")).ifPresent(ways::add);
        return ways;
    }
}
