package org.leat.pack.alternator;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.CURRENT;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.WindingTurns;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.OperatingPoint;

/** Phase current against what the winding carries. */
final class WindingCurrent {

    static final Rule RULE = Rule.of(
                    "alternator/winding-current", ERROR, "phase current against what the winding carries")
            .why("A winding that carries more than its continuous current cooks its insulation; a scrapped motor has no"
                    + " thermal switch to save it.")
            .formula("I_ph,rms at the solved operating point ≤ continuous limit of one lead")
            .judged("running, the nozzle set with most current")
            .source("three-mode bridge model: I_ph,rms / I_dc runs from 0.74 to 1.4, not 0.816 (circuit simulation)")
            .source("IEC 60085 thermal classes behind the limit of the winding")
            .passes("carried", "Each lead carries {value} rms ({current} direct).")
            .fails("overloaded", "Each lead carries {value} rms ({current} direct); the winding stands {limit}.")
            .judge(WindingCurrent::judge)
            .leastWayOut("smaller-nozzle", NozzlesOnHand.NONE_LARGER, NozzlesOnHand::smaller)
            .leastWayOut("other-turns", WindingTurns.WITH_WHEEL, WindingTurns::fewerWithWheel, WindingTurns::more)
            .build();

    private WindingCurrent() {}

    private static Outcome judge(Judgement j) {
        Running worst = Worst.running(j, OperatingPoint::phaseCurrent);
        OperatingPoint point = worst.operatingPoint();
        return j.at("/alternator/current-limit")
                .during(worst)
                .with("current", point.directCurrent(), CURRENT)
                .atMost(point.phaseCurrent(), j.numbers().alternator().currentLimit(), CURRENT);
    }
}
