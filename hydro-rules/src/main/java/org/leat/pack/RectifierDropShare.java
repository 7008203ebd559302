package org.leat.pack;

import java.util.List;
import javax.measure.quantity.ElectricPotential;
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

/** Share of the power that the diodes take. */
final class RectifierDropShare implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("rectifier/drop-share", Level.NOTE)
            .title("share of the power that the diodes take")
            .why("Two diodes in series take the same volts from 12 V as from 48 V. On a low bus that is a tenth of"
                    + " everything.")
            .formula("(2 V_F0 I_dc + 3 r_d I_ph²) / power at the alternator's terminals ≤ limit")
            .judged("running on the nozzles open as built")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("most", QuantityKind.RATIO, 5, "%", RuleCard.COMMON_PRACTICE)
            .message("small", "loss")
            .message("large", "loss")
            .message("schottky", "rating")
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
        Spot spot = j.at("/rectifier/drop-per-diode").during(running.id());
        double power = running.operatingPoint().energy().at(EnergyAccount.Stage.TERMINALS);
        if (!(power > 0)) {
            return List.of(spot.notApplicable("no-current"));
        }
        if (j.design().rectifier() == null || j.design().rectifier().dropPerDiode() == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        double loss = Diodes.loss(j, running.operatingPoint());
        return List.of(spot.compare(
                Comparison.atMost(loss / power, j.limit("most")),
                "small",
                "large",
                Arg.of("loss", loss, QuantityKind.POWER)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Rated.larger(this, j, failure, "schottky", "V", ElectricPotential.class, 0.7, 0.6, 0.55, 0.5, 0.45, 0.4);
    }
}
