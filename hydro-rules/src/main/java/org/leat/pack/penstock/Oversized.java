package org.leat.pack.penstock;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.ENERGY;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.Optional;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.PipeSizes;

/** What the last size of the pipe earns. */
final class Oversized {

    private static final double YEAR = 365.25 * 86400;

    static final Rule RULE = Rule.of("penstock/oversized", NOTE, "what the last size of the pipe earns")
            .why(
                    "The pipe is often half of what a plant costs. Each size more brings less than the one before; where the"
                            + " last brought almost nothing the money is better spent elsewhere.")
            .formula("(power − power with the longest section one size narrower) / power")
            .judged("running on the nozzle set open as built, with the most water the stream has")
            .source(COMMON_PRACTICE)
            .limit("share", RATIO, 2, "%", COMMON_PRACTICE)
            .passes(
                    "earns",
                    "One size narrower ({diameter:mm}) would cost {power}, {energy:kWh} a year; the pipe"
                            + " costs {price}.")
            .fails(
                    "idle",
                    "One size narrower ({diameter:mm}) would cost only {power}, {energy:kWh} a year; the"
                            + " pipe costs {price}.")
            .notApplicable("smallest", "No narrower pipe of this kind to compare with.")
            .judge(Oversized::judge)
            .leastWayOut("narrower", PipeSizes.OTHER, Oversized::narrower)
            .build();

    private Oversized() {}

    private static Outcome judge(Judgement j) {
        double power = j.solved().running().get(0).operatingPoint().batteryPower();
        double price =
                j.at("/penstock").si("/penstock/price", j.design().penstock().price());
        int longest = PipeSizes.longest(j);
        Spot spot = j.at(PipeSizes.path(j.design(), longest) + "/pipe");
        Optional<Double> diameter = PipeSizes.smallerDiameters(j, longest).findFirst();
        if (diameter.isEmpty() || !(power > 0)) {
            return spot.says("smallest");
        }
        Change narrower = PipeSizes.to(j, longest, diameter.get());
        double earned = -j.gain(j.with(narrower.edits()).plant()).orElse(-power);
        return spot.with("power", earned, POWER)
                .with("energy", earned * YEAR, ENERGY)
                .with("price", price, RATIO)
                .with("diameter", diameter.get(), LENGTH)
                .atLeast(earned / power, j.limit("share"));
    }

    private static Stream<Change> narrower(Judgement j, Outcome.Fail failure) {
        return PipeSizes.smaller(j, PipeSizes.longest(j));
    }
}
