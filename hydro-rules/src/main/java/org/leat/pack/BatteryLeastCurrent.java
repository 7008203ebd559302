package org.leat.pack;

import java.util.List;
import java.util.stream.DoubleStream;
import javax.measure.quantity.ElectricCharge;
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
import org.leat.electrics.ChargeCurrentLimit;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Surplus that keeps lead from sulphating. */
final class BatteryLeastCurrent implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("battery/least-current", Level.WARNING)
            .title("surplus that keeps lead from sulphating")
            .why(
                    "A large bank on a small stream never sees the current that drives the sulphate out of its plates. It dies of being"
                            + " too large.")
            .formula("(mean generation − mean use) / bank voltage ≥ C / 50 h")
            .judged("a day of full use at the flow of the year that gives least")
            .source(RuleCard.COMMON_PRACTICE)
            .message("enough")
            .message("too-little")
            .message("not-lead")
            .message("smaller", "capacity")
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
        Running lean = Lean.of(j);
        double surplus = Lean.balance(j, lean, daily.use()).surplus() / DAY;
        return List.of(spot.during(lean.id())
                .compare(
                        Comparison.atLeast(
                                surplus / j.plant().numbers().battery().restingVoltage(),
                                ChargeCurrentLimit.leastMeanForLead(
                                        j.plant().numbers().battery().capacity()),
                                QuantityKind.CURRENT),
                        "enough",
                        "too-little"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        double now = Si.of(j.design().battery().capacity()) / 3600;
        return Search.first(
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
                .map(List::of)
                .orElse(List.of());
    }
}
