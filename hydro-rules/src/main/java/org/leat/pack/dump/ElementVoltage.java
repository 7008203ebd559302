package org.leat.pack.dump;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.DumpLoad;
import org.leat.pack.kit.StandardSizes;

/** What an element made for another voltage really takes. */
final class ElementVoltage {

    static final Rule RULE = Rule.of(
                    "dump/element-voltage", NOTE, "what an element made for another voltage really takes")
            .why(
                    "The power on an element's label holds at the voltage on its label. A heating element of 2 kW made for the"
                            + " mains takes 87 W at 48 V.")
            .formula(
                    "P/P_n = (V/V_n)² at the voltage that switches it on, else absorption voltage, P_n at V_n as marked ≥ limit")
            .judged("battery full")
            .source("P = V²/R: Ohm's law")
            .source(COMMON_PRACTICE)
            .limit("least", RATIO, 50, "%", COMMON_PRACTICE)
            .passes(
                    "near-its-own",
                    "At this battery the element takes {power} of the {marked} it is marked with ({value}).")
            .fails(
                    "far-below",
                    "At this battery the element takes only {power} of the {marked} it is marked with ({value}).")
            .notApplicable("none", DumpLoads.NONE)
            .judge(DumpLoads.judge(ElementVoltage::judge))
            .advice("made-for", "Elements made for {voltage}, or more of these in parallel.", ElementVoltage::madeFor)
            .build();

    private ElementVoltage() {}

    private static Outcome judge(Judgement j, DumpLoad dump) {
        Spot spot = j.at("/dump-load/rated-voltage");
        double rated = spot.si(dump.ratedVoltage());
        double marked = spot.si("/dump-load/power-rating", dump.powerRating());
        double share = Math.pow(j.numbers().fullVoltage() / rated, 2);
        return spot.with("power", share * marked, POWER)
                .with("marked", marked, POWER)
                .atLeast(share, j.limit("least"));
    }

    private static Stream<Change> madeFor(Judgement j, Outcome.Fail failure) {
        return StandardSizes.volts(j.numbers().fullVoltage()).stream()
                .mapToObj(volts -> Change.advice().with("voltage", volts, VOLTAGE));
    }
}
