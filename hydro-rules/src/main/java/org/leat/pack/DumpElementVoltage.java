package org.leat.pack;

import java.util.List;
import java.util.Objects;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.DumpLoad;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** What an element made for another voltage really takes. */
final class DumpElementVoltage implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("dump/element-voltage", Level.NOTE)
            .title("what an element made for another voltage really takes")
            .why(
                    "The power on an element's label holds at the voltage on its label. A heating element of 2 kW made for the"
                            + " mains takes 87 W at 48 V.")
            .formula(
                    "P/P_n = (V/V_n)² at the voltage that switches it on, else absorption voltage, P_n at V_n as marked ≥ limit")
            .judged("battery full")
            .source("P = V²/R: Ohm's law")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("least", QuantityKind.RATIO, 50, "%", RuleCard.COMMON_PRACTICE)
            .message("near-its-own", "power", "marked")
            .message("far-below", "power", "marked")
            .message("none")
            .message("made-for", "voltage")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Outcome> without = Dumped.without(j, "none");
        if (without != null) {
            return without;
        }
        DumpLoad dump = Objects.requireNonNull(j.design().dumpLoad());
        Spot spot = j.at("/dump-load/rated-voltage");
        if (dump.ratedVoltage() == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        if (dump.powerRating() == null) {
            return List.of(spot.notGiven("/dump-load/power-rating"));
        }
        double share = Math.pow(j.plant().numbers().fullVoltage() / Si.of(dump.ratedVoltage()), 2);
        double marked = Si.of(dump.powerRating());
        return List.of(spot.compare(
                Comparison.atLeast(share, j.limit("least")),
                "near-its-own",
                "far-below",
                Arg.of("power", share * marked, QuantityKind.POWER),
                Arg.of("marked", marked, QuantityKind.POWER)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        double volts = j.plant().numbers().fullVoltage();
        return List.of(j.advice("made-for", Arg.of("voltage", volts, QuantityKind.VOLTAGE)));
    }
}
