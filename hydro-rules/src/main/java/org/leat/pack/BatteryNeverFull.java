package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import javax.measure.quantity.ElectricCharge;
import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.catalogue.CellProperty;
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
import org.leat.design.Chemistry;
import org.leat.electrics.EnergyBalance;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Lead that is never filled in some season of the year. */
final class BatteryNeverFull implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("battery/never-full", Level.WARNING)
            .title("lead that is never filled in some season of the year")
            .why(
                    "Lead that does not reach its absorption voltage every week or two keeps its sulphate, loses capacity for good and"
                            + " lets its electrolyte lie in layers. Where the stream leaves too little over in its dry season, that lasts for"
                            + " months.")
            .formula(
                    "mean generation − mean use ≥ D · E/(η · days): what fills the bank from its daily depth of discharge D to"
                            + " absorption in that time")
            .judged("a day of full use at each flow of the year, the one that leaves least over")
            .source("energy balance; energy efficiency of cells: battery education text and common practice")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("days", QuantityKind.TIME, 14, "d", RuleCard.COMMON_PRACTICE)
            .message("filled", "share", "time")
            .message("never", "share", "time")
            .message("not-lead")
            .message("smaller", "capacity")
            .message("larger-nozzle", "bore")
            .message("use-less", "power")
            .build();

    private static final double DAY = 86_400;

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Spot spot = j.at("/battery/capacity");
        if (!Lead.is(j)) {
            return List.of(spot.notApplicable("not-lead"));
        }
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        DailyUse daily = DailyUse.of(j.design());
        if (daily.missing() != null) {
            return List.of(spot.notGiven(daily.missing()));
        }
        List<Running> year = j.cases().overTheYear();
        List<Running> flows = year.isEmpty() ? j.cases().running().subList(0, 1) : year;
        Running lean = Worst.least(flows, r -> surplus(j, r, daily.use()));
        double needed = needed(j);
        long dry =
                flows.stream().filter(r -> surplus(j, r, daily.use()) < needed).count();
        return List.of(spot.during(lean)
                .compare(
                        Comparison.atLeast(surplus(j, lean, daily.use()), needed, QuantityKind.POWER),
                        "filled",
                        "never",
                        Arg.of("share", (double) dry / flows.size(), QuantityKind.RATIO),
                        Arg.of("time", j.limit("days").value(), QuantityKind.TIME)));
    }

    /** Mean power left over, W. */
    private static double surplus(Judgement j, Running running, EnergyBalance.Use use) {
        return Lean.balance(j, running, use).surplus() / DAY;
    }

    /** Mean power that fills the bank in time, W. */
    private static double needed(Judgement j) {
        Chemistry chemistry = j.design().battery().chemistry();
        double depth = CellChemistryCatalogue.usual(chemistry, CellProperty.DEPTH_OF_DISCHARGE);
        double efficiency = CellChemistryCatalogue.usual(chemistry, CellProperty.ENERGY_EFFICIENCY);
        return depth * Lean.stored(j) / efficiency / j.limit("days").value();
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        double now = Si.of(j.design().battery().capacity()) / 3600;
        Search.first(
                        this,
                        j,
                        failure,
                        DoubleStream.of(0.8, 0.6, 0.5, 0.4, 0.3, 0.2).mapToObj(times -> {
                            double hours = Math.floor(now * times / 10) * 10;
                            return Candidate.of(
                                    "smaller",
                                    new Edit("/battery/capacity", Si.quantity(hours, "Ah", ElectricCharge.class)),
                                    Arg.of("capacity", hours * 3600, QuantityKind.CHARGE));
                        }))
                .ifPresent(ways::add);
        Search.first(this, j, failure, NozzlesOnHand.larger(j, "larger-nozzle")).ifPresent(ways::add);
        Comparison comparison = failure.comparison();
        if (comparison != null) {
            ways.add(j.advice("use-less", Arg.of("power", comparison.low() - comparison.value(), QuantityKind.POWER)));
        }
        return ways;
    }
}
