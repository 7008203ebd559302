package org.leat.pack;

import java.util.List;
import javax.measure.quantity.ElectricPotential;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.quantity.QuantityKind;

/** Whether each device breaks direct current at the highest voltage it can meet. */
final class ProtectionDcRated implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("protection/dc-rated", Level.ERROR)
            .title("whether each device breaks direct current at the highest voltage it can meet")
            .why("Direct current has no zero to put out an arc. A fuse or breaker made for alternating current burns on"
                    + " after it has opened.")
            .formula("highest bus voltage of any case ≤ direct voltage the device is rated to break")
            .judged(
                    "battery full, removed or opened by its management, dump load lost, load lost; each nozzle set on hand")
            .source("IEC 60364-5-53 with IEC 60947-2 and IEC 60269: rating for direct current")
            .message("rated", "device", "cause")
            .message("too-low", "device", "cause")
            .message("none")
            .message("higher", "rating")
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
        if (j.design().protection().isEmpty()) {
            return List.of(j.at("/protection").notApplicable("none"));
        }
        HighestBusVoltage highest = HighestBusVoltage.of(j.cases());
        return Devices.all(j.design()).stream()
                .map(d -> Rated.atMost(
                        j.at(d.path() + "/direct-voltage").during(highest.situation()),
                        highest.volts(),
                        Rated.si(d.device().directVoltage()),
                        QuantityKind.VOLTAGE,
                        "rated",
                        "too-low",
                        d.name(),
                        Arg.phrase("cause", highest.cause())))
                .toList();
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Rated.raised(
                this,
                j,
                failure,
                "higher",
                "V",
                ElectricPotential.class,
                32,
                58,
                80,
                125,
                160,
                250,
                440,
                500,
                750,
                1000);
    }
}
