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
import org.leat.design.Inverter;
import org.leat.electrics.InverterIdleShare;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** The inverter's own consumption against what the stream gives. */
final class InverterStandingLoss implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("inverter/standing-loss", Level.WARNING)
            .title("the inverter's own consumption against what the stream gives")
            .why(
                    "Fifteen watts day and night are thirty per cent of a plant of fifty. A large inverter on a small stream eats what"
                            + " it should serve.")
            .formula("own consumption / battery power ≤ limit")
            .judged("inverter on day and night, at the flow of the year that gives least")
            .source("energy balance")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("most", QuantityKind.RATIO, 10, "%", RuleCard.COMMON_PRACTICE)
            .message("small", "power")
            .message("large", "power")
            .message("none")
            .message("smaller", "power")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Inverter inverter = j.design().inverter();
        Spot spot = j.at("/inverter/standing-power");
        if (inverter == null) {
            return List.of(Inverters.missing(j, spot.path(), "none"));
        }
        if (inverter.standingPower() == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Running lean = Lean.of(j);
        double power = Math.max(lean.operatingPoint().batteryPower(), 1e-3);
        return List.of(spot.during(lean.id())
                .compare(
                        Comparison.atMost(
                                InverterIdleShare.share(Si.of(inverter.standingPower()), power), j.limit("most")),
                        "small",
                        "large",
                        Arg.of("power", power, QuantityKind.POWER)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        double most =
                j.limit("most").value() * Math.max(Lean.of(j).operatingPoint().batteryPower(), 0);
        return List.of(j.advice("smaller", Arg.of("power", most, QuantityKind.POWER)));
    }
}
