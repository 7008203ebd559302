package org.leat.pack;

import java.util.ArrayList;
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
import org.leat.electrics.EnergyBalance;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;

/** A day's use against a day's generation through the year. */
final class LoadsEnergyBalance implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("loads/energy-balance", Level.WARNING)
            .title("a day's use against a day's generation through the year")
            .why(
                    "A stream gives little, but day and night. If the dry season does not cover the day's use, the battery ends flat"
                            + " however large it is.")
            .formula("energy needed in a day, the battery's and the inverter's losses counted ≤ battery power · 24 h")
            .judged("a day of full use at each flow of the year, the one that gives least")
            .source("energy balance; energy efficiency of cells: battery education text and common practice")
            .message("covered", "share")
            .message("short", "share")
            .message("use-less", "power")
            .message("larger-nozzle", "bore")
            .build();

    private static final double DAY = 86_400;

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        DailyUse daily = DailyUse.of(j.design());
        Running lean = Lean.of(j);
        Spot spot = j.at("/loads").during(lean.id());
        if (daily.missing() != null) {
            return List.of(spot.notGiven(daily.missing()));
        }
        EnergyBalance balance = Lean.balance(j, lean, daily.use());
        return List.of(spot.compare(
                Comparison.atMost(balance.powerNeeded() * DAY, balance.generated(), QuantityKind.ENERGY),
                "covered",
                "short",
                Arg.of("share", shortShare(j, daily.use()), QuantityKind.RATIO)));
    }

    /** Share of the flows of the year at which the day falls short. */
    private static double shortShare(Judgement j, EnergyBalance.Use use) {
        List<Running> year = j.cases().overTheYear();
        List<Running> all = year.isEmpty() ? j.cases().running().subList(0, 1) : year;
        long fallShort =
                all.stream().filter(r -> Lean.balance(j, r, use).surplus() < 0).count();
        return (double) fallShort / all.size();
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        Search.first(this, j, failure, NozzlesOnHand.larger(j, "larger-nozzle")).ifPresent(ways::add);
        Comparison comparison = failure.comparison();
        if (comparison != null) {
            double less = (comparison.value() - comparison.high()) / DAY;
            ways.add(j.advice("use-less", Arg.of("power", less, QuantityKind.POWER)));
        }
        return ways;
    }
}
