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
import org.leat.plant.cases.LoadLost;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;

/** Runaway speed against what rotor and bearings stand. */
final class AlternatorOverspeed implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("alternator/overspeed", Level.ERROR)
            .title("runaway speed against what rotor and bearings stand")
            .why(
                    "When the load is lost the wheel runs up to about twice its working speed in seconds. Magnets come off rotors, and printed wheels burst.")
            .formula("speed at which the runner's torque is nil, nozzles open · gear ratio ≤ speed limit")
            .judged("load lost, the nozzle set that runs fastest")
            .source(
                    "runaway 1.75 to 1.9 times best speed for real impulse wheels: handbooks (from memory); ideal 2: momentum theorem")
            .message("stands-it", "runner")
            .message("too-fast", "runner")
            .message("needed", "speed")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().loadLost().isEmpty()) {
            return Open.unsolved(j);
        }
        LoadLost worst = Worst.most(j.cases().loadLost(), LoadLost::alternatorSpeed);
        Spot spot = j.at("/alternator/speed-limit").during(worst.id());
        Amount stated = j.plant().numbers().alternator().speedLimit();
        if (!(stated instanceof Amount.Known limited)) {
            return List.of(Open.because(spot, stated));
        }
        double limit = limited.value();
        return List.of(spot.compare(
                Comparison.atMost(worst.alternatorSpeed(), limit, QuantityKind.ROTATIONAL_SPEED),
                "stands-it",
                "too-fast",
                Arg.of("runner", worst.speed(), QuantityKind.ROTATIONAL_SPEED)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        return comparison == null
                ? List.of()
                : List.of(j.advice("needed", Arg.of("speed", comparison.value(), QuantityKind.ROTATIONAL_SPEED)));
    }
}
