package org.leat.pack.rectifier;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Rectifier;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.duties.BridgeHeat;
import org.leat.quantity.Quantities.ThermalResistance;

/** Temperature inside the diodes. */
final class DiodeTemperature {

    private static final double[] HEAT_SINKS = {5, 4, 3, 2.5, 2, 1.5, 1.2, 1, 0.8, 0.6, 0.5, 0.4, 0.3, 0.2};

    static final Rule RULE = Rule.of("rectifier/junction-temperature", ERROR, "temperature inside the diodes")
            .why("A bridge loses one to two volts of everything that passes it, as heat in a part the size of a thumb."
                    + " Without a heat sink it unsolders itself within the hour.")
            .formula("T_j = T_air + R_th (2 V_F0 I_dc + 3 r_d I_ph²) ≤ limit of the diodes")
            .judged("running in the hottest air, the nozzle set with most current")
            .source(
                    "heat balance; conduction loss of a three-phase bridge: Rashid, Power Electronics, ch. 3 (from memory)")
            .passes("cool-enough", "The diodes reach {value} inside ({loss} of heat).")
            .fails("too-hot", "The diodes reach {value} inside ({loss} of heat); they stand {limit}.")
            .judge(DiodeTemperature::judge)
            .leastWayOut(
                    "heat-sink",
                    "A heat sink that brings junction to air down to {rating}.",
                    FieldChanges.ratings("K/W", ThermalResistance.class, HEAT_SINKS))
            .build();

    private DiodeTemperature() {}

    private static Outcome judge(Judgement j) {
        Running worst = Worst.most(
                j.solved().running(), r -> BridgeHeat.of(j.numbers(), r).loss());
        BridgeHeat heat = BridgeHeat.of(j.numbers(), worst);
        Spot spot = j.at("/rectifier/junction-to-air").during(worst);
        Rectifier bridge = spot.given(j.design().rectifier());
        double junction = heat.junction(spot.si(bridge.junctionToAir()));
        return spot.with("loss", heat.loss(), POWER)
                .atMost(junction, spot.si("/rectifier/junction-limit", bridge.junctionLimit()), TEMPERATURE);
    }
}
