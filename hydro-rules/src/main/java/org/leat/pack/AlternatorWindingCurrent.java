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
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;

/** Phase current against what the winding carries. */
final class AlternatorWindingCurrent implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("alternator/winding-current", Level.ERROR)
            .title("phase current against what the winding carries")
            .why(
                    "A winding that carries more than its continuous current cooks its insulation; a scrapped motor has no thermal switch to save it.")
            .formula("I_ph,rms at the solved operating point ≤ continuous limit of one lead")
            .judged("running, the nozzle set with most current")
            .source("three-mode bridge model: I_ph,rms / I_dc runs from 0.74 to 1.4, not 0.816 (circuit simulation)")
            .source("IEC 60085 thermal classes behind the limit of the winding")
            .message("carried", "current")
            .message("overloaded", "current")
            .message("smaller-nozzle", "bore")
            .message("other-turns", "turns", "diameter")
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
        Running worst = Worst.most(
                j.cases().running(), running -> running.operatingPoint().phaseCurrent());
        Spot spot = j.at("/alternator/current-limit").during(worst.id());
        Amount stated = j.plant().numbers().alternator().currentLimit();
        if (!(stated instanceof Amount.Known limited)) {
            return List.of(Open.because(spot, stated));
        }
        double limit = limited.value();
        double current = worst.operatingPoint().phaseCurrent();
        return List.of(spot.compare(
                Comparison.atMost(current, limit, QuantityKind.CURRENT),
                "carried",
                "overloaded",
                Arg.of("current", worst.operatingPoint().directCurrent(), QuantityKind.CURRENT)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        Search.least(this, j, failure, NozzlesOnHand.smaller(j, "smaller-nozzle"))
                .ifPresent(ways::add);
        OtherTurns.any(this, j, failure, "other-turns").ifPresent(ways::add);
        return ways;
    }
}
