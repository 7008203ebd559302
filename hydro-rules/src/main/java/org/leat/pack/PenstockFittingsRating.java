package org.leat.pack;

import java.util.Arrays;
import java.util.List;
import javax.measure.quantity.Pressure;
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

/** Highest pressure of any case against the weakest joint, valve or clamp. */
final class PenstockFittingsRating implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/fittings-rating", Level.ERROR)
            .title("weakest joint, valve or clamp against the highest pressure")
            .why(
                    "A penstock is as strong as its weakest coupler. Joints carry no allowance for surges as pipe does, and"
                            + " one that lets go whips the pipe.")
            .formula("highest pressure of any case ≤ working pressure of the weakest fitting")
            .judged("standing, and the worst of every stop of the water, at the lowest point")
            .source("EN 805: allowable maximum operating pressure of every component, surge included")
            .message("holds", "peak")
            .message("too-weak", "peak")
            .message("stronger", "rating")
            .build();

    private static final double[] NOMINAL_BAR = {6, 10, 16, 25, 40};
    private static final String PATH = "/penstock/rated-fittings";

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().closing().isEmpty()) {
            return Open.unsolved(j);
        }
        Amount stated = j.plant().numbers().penstock().fittingsRating();
        if (!(stated instanceof Amount.Known limited)) {
            return List.of(Open.because(j.at("/penstock"), stated));
        }
        double rating = limited.value();
        HighestPressure.Peak peak = HighestPressure.anywhere(j);
        Spot spot = j.at(PATH).during(peak.during());
        if (!(peak.pressure() instanceof Amount.Known known)) {
            return List.of(Open.because(spot, peak.pressure()));
        }
        return List.of(spot.compare(
                Comparison.atMost(known.value(), rating, QuantityKind.PRESSURE),
                "holds",
                "too-weak",
                Arg.of("peak", known.value(), QuantityKind.PRESSURE)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Search.first(
                        this,
                        j,
                        failure,
                        Arrays.stream(NOMINAL_BAR)
                                .mapToObj(bar -> Candidate.of(
                                        "stronger",
                                        new Edit(PATH, Si.quantity(bar, "bar", Pressure.class)),
                                        Arg.of("rating", bar * 1e5, QuantityKind.PRESSURE))))
                .stream()
                .toList();
    }
}
