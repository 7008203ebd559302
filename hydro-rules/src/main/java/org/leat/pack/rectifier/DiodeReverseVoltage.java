package org.leat.pack.rectifier;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import javax.measure.quantity.ElectricPotential;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.BusNode;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.HighestBusVoltage;

/** Diodes against the voltage of a runaway. */
final class DiodeReverseVoltage {

    private static final String RATING = "/rectifier/repetitive-peak-reverse-voltage";

    static final Rule RULE = Rule.of("rectifier/reverse-voltage", ERROR, "diodes against the voltage of a runaway")
            .why(
                    "Each diode of the bridge blocks the peak voltage between two leads. At runaway that is about twice the"
                            + " working voltage; a diode that breaks down shorts two phases, and the bridge burns.")
            .formula("peak line voltage at runaway, magnets cold · factor ≤ repetitive peak reverse voltage")
            .judged("the situation with the highest bus voltage; each nozzle set on hand")
            .source(
                    "peak reverse voltage of a three-phase bridge equals the peak line voltage: Rashid, Power Electronics,"
                            + " ch. 3")
            .source(COMMON_PRACTICE)
            .limit("least-factor", RATIO, 1.2, "", COMMON_PRACTICE, HIGHER)
            .limit("good-factor", RATIO, 2, "", COMMON_PRACTICE, HIGHER)
            .passes("stands-it", "The diodes block {peak} ({cause}).")
            .fails(
                    "too-low",
                    "The diodes block {peak} ({cause}); with a factor of {factor} they need {value} and are made for {limit}.")
            .fails(
                    "thin-margin",
                    "The diodes block {peak} ({cause}); with the usual factor of {factor} they would need {value} and are"
                            + " made for {limit}.")
            .judge(DiodeReverseVoltage::judge)
            .leastWayOut(
                    "higher",
                    "Diodes of {rating}.",
                    FieldChanges.ratings("V", ElectricPotential.class, 100, 200, 400, 600, 800, 1000, 1200, 1600))
            .build();

    private DiodeReverseVoltage() {}

    private static Outcome judge(Judgement j) {
        HighestBusVoltage highest = HighestBusVoltage.of(j.solved(), BusNode.BRIDGE);
        Spot spot = j.at(RATING)
                .during(highest.situation())
                .with("peak", highest.volts(), VOLTAGE)
                .with(Arg.phrase("cause", highest.cause()));
        double rating = spot.known(j.numbers().rectifier().reverseVoltageRating());
        double least = j.limit("least-factor").value();
        boolean breaksDown = highest.volts() * least > rating;
        double factor = breaksDown ? least : j.limit("good-factor").value();
        Comparison comparison = Comparison.atMost(highest.volts() * factor, rating, VOLTAGE);
        return comparison.holds()
                ? spot.compare(comparison)
                : spot.as(breaksDown ? ERROR : WARNING)
                        .saying("stands-it", breaksDown ? "too-low" : "thin-margin")
                        .with("factor", factor, RATIO)
                        .compare(comparison);
    }
}
