package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Charging current against what the battery takes. */
final class BatteryChargeCurrent implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("battery/charge-current", Level.ERROR)
            .title("charging current against what the battery takes")
            .why(
                    "A battery charged faster than its maker allows heats, gasses or plates lithium. A turbine charges day and night, so a small excess is enough.")
            .formula("generation into the battery, loads off ≤ limit of the bank")
            .judged("running, the nozzle set that charges most, no load taking anything")
            .source(
                    "limits by chemistry: makers' data; lead C/8 to C/5, lithium C/2: battery handbooks and common practice")
            .message("taken")
            .message("too-much")
            .message("larger-bank", "capacity")
            .message("smaller-nozzle", "bore")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Running worst = Worst.most(
                j.cases().running(), running -> running.operatingPoint().batteryCurrent());
        Spot spot = j.at("/battery/capacity").during(worst.id());
        Amount limit = j.plant().numbers().battery().chargeCurrentLimit();
        if (!(limit instanceof Amount.Known known)) {
            return List.of(Open.because(spot, limit));
        }
        return List.of(spot.compare(
                Comparison.atMost(worst.operatingPoint().batteryCurrent(), known.value(), QuantityKind.CURRENT),
                "taken",
                "too-much"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        Comparison comparison = failure.comparison();
        if (comparison != null && j.design().battery().chargeCurrentLimit() == null) {
            double hours = Si.of(j.design().battery().capacity()) / 3600;
            double needed = Math.ceil(hours * comparison.value() / comparison.high() / 10) * 10;
            Search.least(
                            this,
                            j,
                            failure,
                            Stream.of(needed, needed + 10, needed + 20)
                                    .map(ah -> Candidate.of(
                                            "larger-bank",
                                            new Edit(
                                                    "/battery/capacity",
                                                    Si.quantity(ah, "Ah", javax.measure.quantity.ElectricCharge.class)),
                                            Arg.of("capacity", ah * 3600, QuantityKind.CHARGE))))
                    .ifPresent(ways::add);
        }
        Search.least(this, j, failure, NozzlesOnHand.smaller(j, "smaller-nozzle"))
                .ifPresent(ways::add);
        return ways;
    }
}
