package org.leat.pack;

import java.util.List;
import javax.measure.quantity.Power;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Inverter;
import org.leat.design.Load;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Everything at once against the inverter's continuous power. */
final class InverterContinuous implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("inverter/continuous", Level.WARNING)
            .canFailAs(Level.ERROR)
            .hurtsNobody()
            .title("everything at once against the inverter's continuous power")
            .why(
                    "An inverter that is overloaded shuts off, usually in the dark. One load alone that is more than it can give can"
                            + " never run.")
            .formula("sum of all loads on alternating current ≤ continuous power; an error where one alone exceeds it")
            .judged("all loads at once")
            .source(RuleCard.COMMON_PRACTICE)
            .message("enough")
            .message("too-little")
            .message("one-too-large", "load")
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
        Spot spot = j.at("/inverter/continuous-power");
        if (inverter == null) {
            return List.of(Inverters.missing(j, spot.path(), "none"));
        }
        if (inverter.continuousPower() == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        if (j.design().loads().isEmpty()) {
            return List.of(spot.notGiven("/loads"));
        }
        double rating = Si.of(inverter.continuousPower());
        for (Load load : Inverters.loads(j)) {
            Comparison alone = Comparison.atMost(Si.of(load.power()), rating, QuantityKind.POWER);
            if (!alone.holds()) {
                return List.of(
                        spot.compare(Level.ERROR, alone, "enough", "one-too-large", Arg.of("load", load.name())));
            }
        }
        return List.of(spot.compare(
                Comparison.atMost(Inverters.together(j), rating, QuantityKind.POWER), "enough", "too-little"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Rated.raised(
                this,
                j,
                failure,
                "larger",
                "W",
                Power.class,
                300,
                500,
                800,
                1000,
                1500,
                2000,
                3000,
                5000,
                8000,
                10_000);
    }
}
