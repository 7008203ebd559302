package org.leat.pack;

import java.util.List;
import javax.measure.quantity.Power;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Inverter;
import org.leat.quantity.QuantityKind;

/** Starting power against the inverter's surge power. */
final class InverterSurge implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("inverter/surge", Level.ERROR)
            .hurtsNobody()
            .title("starting power against the inverter's surge power")
            .why(
                    "A compressor or a pump takes several times its power for a second. An inverter that cannot give it trips, and the"
                            + " motor that does not start burns.")
            .formula("all loads at once + (starting factor − 1) · power of the one that starts hardest ≤ surge power")
            .judged("the hardest start while everything else runs")
            .source(RuleCard.COMMON_PRACTICE)
            .message("enough")
            .message("too-little")
            .message("none")
            .message("larger", "rating")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Inverter inverter = j.design().inverter();
        Spot spot = j.at("/inverter/surge-power");
        if (inverter == null) {
            return List.of(Inverters.missing(j, spot.path(), "none"));
        }
        String unknown = Inverters.unknownStart(j);
        return List.of(
                unknown != null
                        ? spot.notGiven(unknown)
                        : Rated.atMost(
                                spot,
                                Inverters.starting(j),
                                Rated.si(inverter.surgePower()),
                                QuantityKind.POWER,
                                "enough",
                                "too-little"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Rated.raised(
                this, j, failure, "larger", "W", Power.class, 600, 1000, 1600, 2000, 3000, 4000, 6000, 10_000, 20_000);
    }
}
