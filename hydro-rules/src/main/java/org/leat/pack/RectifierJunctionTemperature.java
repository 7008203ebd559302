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
import org.leat.design.Rectifier;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.quantity.ThermalResistance;

/** Temperature inside the diodes. */
final class RectifierJunctionTemperature implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("rectifier/junction-temperature", Level.ERROR)
            .title("temperature inside the diodes")
            .why("A bridge loses one to two volts of everything that passes it, as heat in a part the size of a thumb."
                    + " Without a heat sink it unsolders itself within the hour.")
            .formula("T_j = T_air + R_th (2 V_F0 I_dc + 3 r_d I_ph²) ≤ limit of the diodes")
            .judged("running in the hottest air, the nozzle set with most current")
            .source(
                    "heat balance; conduction loss of a three-phase bridge: Rashid, Power Electronics, ch. 3 (from memory)")
            .message("cool-enough", "loss")
            .message("too-hot", "loss")
            .message("heat-sink", "rating")
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
        Running worst = Worst.most(j.cases().running(), r -> Diodes.loss(j, r.operatingPoint()));
        Spot spot = j.at("/rectifier/junction-to-air").during(worst.id());
        Rectifier bridge = j.design().rectifier();
        if (bridge == null || bridge.junctionToAir() == null) {
            return List.of(spot.notGiven("/rectifier/junction-to-air"));
        }
        if (bridge.junctionLimit() == null) {
            return List.of(spot.notGiven("/rectifier/junction-limit"));
        }
        double loss = Diodes.loss(j, worst.operatingPoint());
        double junction = j.plant().numbers().site().highestAirTemperature() + loss * Si.of(bridge.junctionToAir());
        return List.of(spot.compare(
                Comparison.atMost(junction, Si.of(bridge.junctionLimit()), QuantityKind.TEMPERATURE),
                "cool-enough",
                "too-hot",
                Arg.of("loss", loss, QuantityKind.POWER)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Rated.larger(
                this,
                j,
                failure,
                "heat-sink",
                "K/W",
                ThermalResistance.class,
                5,
                4,
                3,
                2.5,
                2,
                1.5,
                1.2,
                1,
                0.8,
                0.6,
                0.5,
                0.4,
                0.3,
                0.2);
    }
}
