package org.leat.pack.rectifier;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;

import javax.measure.quantity.ElectricPotential;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Rectifier;
import org.leat.pack.kit.FieldChanges;
import org.leat.plant.cases.Running;
import org.leat.plant.duties.BridgeHeat;
import org.leat.plant.solved.EnergyAccount.Stage;

/** Share of the power that the diodes take. */
final class DropShare {

    static final Rule RULE = Rule.of("rectifier/drop-share", NOTE, "share of the power that the diodes take")
            .why("Two diodes in series take the same volts from 12 V as from 48 V. On a low bus that is a tenth of"
                    + " everything.")
            .formula("(2 V_F0 I_dc + 3 r_d I_ph²) / power at the alternator's terminals ≤ limit")
            .judged("running on the nozzles open as built")
            .source(COMMON_PRACTICE)
            .limit("most", RATIO, 5, "%", COMMON_PRACTICE)
            .passes("small", "The diodes take {value} of the power ({loss}).")
            .fails("large", "The diodes take {value} of the power ({loss}); good is {limit}.")
            .notApplicable("no-current", "Not judged: no current flows.")
            .judge(DropShare::judge)
            .leastWayOut(
                    "schottky",
                    "Diodes that drop {rating} each (Schottky diodes, where their reverse voltage suffices).",
                    FieldChanges.ratings("V", ElectricPotential.class, 0.7, 0.6, 0.55, 0.5, 0.45, 0.4))
            .build();

    private DropShare() {}

    private static Outcome judge(Judgement j) {
        Running running = j.solved().running().get(0);
        Spot spot = j.at("/rectifier/drop-per-diode").during(running);
        double power = running.operatingPoint().energy().at(Stage.TERMINALS);
        if (!(power > 0)) {
            return spot.says("no-current");
        }
        Rectifier bridge = spot.given(j.design().rectifier());
        spot.given(bridge.dropPerDiode());
        double loss = BridgeHeat.of(j.numbers(), running).loss();
        return spot.with("loss", loss, POWER).atMost(loss / power, j.limit("most"));
    }
}
