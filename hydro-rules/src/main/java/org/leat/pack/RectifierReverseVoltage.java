package org.leat.pack;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricPotential;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.pack.Search.Candidate;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Diodes against the voltage of a runaway. */
final class RectifierReverseVoltage implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("rectifier/reverse-voltage", Level.ERROR)
            .title("diodes against the voltage of a runaway")
            .why(
                    "Each diode of the bridge blocks the peak voltage between two leads. At runaway that is about twice the working voltage; a diode that breaks down shorts two phases, and the bridge burns.")
            .formula("peak line voltage at runaway, magnets cold · factor ≤ repetitive peak reverse voltage")
            .judged("the situation with the highest bus voltage; each nozzle set on hand")
            .source(
                    "peak reverse voltage of a three-phase bridge equals the peak line voltage: Rashid, Power Electronics, ch. 3")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("least-factor", QuantityKind.RATIO, 1.2, "", RuleCard.COMMON_PRACTICE)
            .limit("good-factor", QuantityKind.RATIO, 2, "", RuleCard.COMMON_PRACTICE)
            .message("stands-it", "peak", "cause")
            .message("too-low", "peak", "cause", "factor")
            .message("thin-margin", "peak", "cause", "factor")
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
        HighestBusVoltage highest = HighestBusVoltage.of(j.cases());
        Spot spot = j.at("/rectifier/repetitive-peak-reverse-voltage").during(highest.situation());
        Amount stated = j.plant().numbers().rectifier().reverseVoltageRating();
        if (!(stated instanceof Amount.Known limited)) {
            return List.of(Open.because(spot, stated));
        }
        double rating = limited.value();
        double peak = highest.volts();
        double least = j.limit("least-factor").value();
        boolean breaksDown = peak * least > rating;
        double factor = breaksDown ? least : j.limit("good-factor").value();
        Comparison comparison = Comparison.atMost(peak * factor, rating, QuantityKind.VOLTAGE);
        Arg told = Arg.of("peak", peak, QuantityKind.VOLTAGE);
        Arg cause = Arg.phrase("cause", highest.cause());
        if (comparison.holds()) {
            return List.of(spot.compare(comparison, "stands-it", "too-low", told, cause));
        }
        return List.of(spot.compare(
                breaksDown ? Level.ERROR : Level.WARNING,
                comparison,
                "stands-it",
                breaksDown ? "too-low" : "thin-margin",
                told,
                cause,
                Arg.of("factor", factor, QuantityKind.RATIO)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        double needed =
                j.limit("good-factor").value() * HighestBusVoltage.of(j.cases()).volts();
        return Search.least(
                        this,
                        j,
                        failure,
                        Stream.of(100, 200, 400, 600, 800, 1000, 1200, 1600)
                                .filter(volts -> volts >= needed)
                                .map(volts -> Candidate.of(
                                        "higher",
                                        new Edit(
                                                "/rectifier/repetitive-peak-reverse-voltage",
                                                Si.quantity(volts, "V", ElectricPotential.class)),
                                        Arg.of("rating", volts, QuantityKind.VOLTAGE))))
                .map(List::of)
                .orElse(List.of());
    }
}
