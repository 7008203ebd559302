package org.leat.pack;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Force;
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
import org.leat.design.Bearings;
import org.leat.design.Runner;
import org.leat.law.Answer;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Life of the bearing beside the runner under jet and weight. */
final class RunnerBearingLife implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("runner/bearing-life", Level.WARNING)
            .title("life of the bearing beside the runner")
            .why(
                    "A bearing that dies lets the wheel touch its housing. Alternators made for other work seldom expect a wheel"
                            + " that hangs on their shaft; water past the seal ends any bearing sooner.")
            .formula("L = 10⁶ · 2π/ω · (C/P)^p; P = (F_jet + m g)(L_b + a)/L_b, with 0.56 P + 1.6 F_axial where more")
            .judged("running, one jet alone pulling with the weight, on the nozzle set that wears most")
            .source("ISO 281:2007, 5.3 and table 3")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("life", QuantityKind.TIME, 20000, "h", RuleCard.COMMON_PRACTICE)
            .message("lasts", "load")
            .message("wears", "load")
            .message("stronger", "rating")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Runner runner = j.design().runner();
        Bearings bearings = runner == null ? null : runner.bearings();
        if (runner == null || bearings == null) {
            return List.of(j.at("/").notGiven("/runner/bearings"));
        }
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Spot at = j.at("/runner/bearings/dynamic-rating");
        String missing = BearingDuty.missing(j);
        if (missing != null) {
            return List.of(at.notGiven(missing));
        }
        BearingDuty duty = BearingDuty.worst(j, bearings);
        Spot spot = at.during(duty.running());
        Arg load = Arg.of("load", duty.load(), QuantityKind.FORCE);
        if (!duty.turns()) {
            return List.of(spot.notApplicable("lasts", load));
        }
        Answer life = duty.life(bearings);
        if (life instanceof Answer.Outside outside) {
            return List.of(spot.outsideOf(outside));
        }
        return List.of(spot.compare(Comparison.atLeast(life.orThrow(), j.limit("life")), "lasts", "wears", load));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Runner runner = j.design().runner();
        Bearings bearings = runner == null ? null : runner.bearings();
        if (bearings == null) {
            return List.of();
        }
        double needed = 0;
        for (Running running : j.cases().running()) {
            BearingDuty duty = BearingDuty.of(j, bearings, running);
            if (duty.turns()) {
                needed = Math.max(
                        needed, duty.neededRating(bearings, j.limit("life").value()));
            }
        }
        double newtons = Math.ceil(needed / 100 + 1e-9) * 100;
        Candidate stronger = Candidate.of(
                "stronger",
                new Edit("/runner/bearings/dynamic-rating", Si.quantity(newtons, "N", Force.class)),
                Arg.of("rating", newtons, QuantityKind.FORCE));
        return Search.first(this, j, failure, Stream.of(stronger)).stream().toList();
    }
}
