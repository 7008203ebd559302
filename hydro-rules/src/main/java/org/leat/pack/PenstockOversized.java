package org.leat.pack;

import java.util.List;
import java.util.Optional;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Penstock;
import org.leat.pack.Search.Candidate;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** What the last size of the pipe earns. */
final class PenstockOversized implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/oversized", Level.NOTE)
            .title("what the last size of the pipe earns")
            .why(
                    "The pipe is often half of what a plant costs. Each size more brings less than the one before; where the"
                            + " last brought almost nothing the money is better spent elsewhere.")
            .formula("(power − power with the longest section one size narrower) / power")
            .judged("running on the nozzle set open as built, with the most water the stream has")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("share", QuantityKind.RATIO, 2, "%", RuleCard.COMMON_PRACTICE)
            .message("earns", "power", "energy", "price", "diameter")
            .message("idle", "power", "energy", "price", "diameter")
            .message("smallest")
            .message("narrower", "section", "diameter")
            .build();

    private static final double YEAR = 365.25 * 86400;

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Penstock penstock = j.design().penstock();
        if (penstock.price() == null) {
            return List.of(j.at("/penstock").notGiven("/penstock/price"));
        }
        double power = j.cases().running().get(0).operatingPoint().batteryPower();
        int longest = PipeSizes.longest(j);
        Spot spot = j.at(PipeSizes.path(j.design(), longest) + "/pipe");
        Optional<Candidate> smaller = PipeSizes.smaller(j, longest, "narrower").findFirst();
        if (smaller.isEmpty() || !(power > 0)) {
            return List.of(spot.notApplicable("smallest"));
        }
        Double lost = j.gain(j.with(smaller.get().edits()).plant());
        double earned = lost == null ? power : -lost;
        return List.of(spot.compare(
                Comparison.atLeast(earned / power, j.limit("share")),
                "earns",
                "idle",
                Arg.of("power", earned, QuantityKind.POWER),
                Arg.of("energy", earned * YEAR, QuantityKind.ENERGY),
                Arg.of("price", Si.of(penstock.price()), QuantityKind.RATIO),
                smaller.get().args().get(1)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        int longest = PipeSizes.longest(j);
        return Search.least(this, j, failure, PipeSizes.smaller(j, longest, "narrower")).stream()
                .toList();
    }
}
