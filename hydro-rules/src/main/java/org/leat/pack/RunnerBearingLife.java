package org.leat.pack;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Force;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Bearings;
import org.leat.design.Runner;
import org.leat.law.Answer;
import org.leat.law.Gravity;
import org.leat.pack.Search.Candidate;
import org.leat.plant.PlantNumbers;
import org.leat.plant.Running;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.turbine.BearingLife;
import org.leat.turbine.EquivalentBearingLoad;
import org.leat.turbine.OverhungBearings;

/** Life of the bearing beside the runner under jet and weight. */
final class RunnerBearingLife implements Rule {

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
        if (runner.mass() == null) {
            return List.of(at.notGiven("/runner/mass"));
        }
        if (bearings.overhang() == null || bearings.spacing() == null) {
            return List.of(at.notGiven("/runner/bearings/" + (bearings.overhang() == null ? "overhang" : "spacing")));
        }
        Running running = Worst.most(
                j.cases().running(),
                r -> load(j, bearings, r) * Math.cbrt(r.operation().speed()));
        double load = load(j, bearings, running);
        double speed = running.operation().speed();
        Spot spot = at.during(running);
        boolean roller = Boolean.TRUE.equals(bearings.roller());
        if (!(speed > 0) || !(load > 0)) {
            return List.of(spot.notApplicable("lasts", Arg.of("load", load, QuantityKind.FORCE)));
        }
        Answer life = BearingLife.basic(Si.of(bearings.dynamicRating()), load, speed, roller);
        if (life instanceof Answer.Outside outside) {
            return List.of(spot.outside(outside));
        }
        return List.of(spot.compare(
                Comparison.atLeast(life.orThrow(), j.limit("life")),
                "lasts",
                "wears",
                Arg.of("load", load, QuantityKind.FORCE)));
    }

    private static double load(Judgement j, Bearings bearings, Running running) {
        PlantNumbers numbers = j.plant().numbers();
        double radius = numbers.runner().pitchDiameter() / 2;
        int jets = Math.max(1, running.water().jets().size());
        double pull = Math.abs(running.operation().torque()) / radius / jets;
        Runner runner = j.design().runner();
        double weight = runner == null ? 0 : Si.of(runner.mass(), 0) * Gravity.STANDARD;
        double radial =
                OverhungBearings.near(pull + weight, Si.of(bearings.overhang(), 0), Si.of(bearings.spacing(), 1));
        double axial = numbers.water().density()
                * running.water().flow()
                * running.water().jetVelocity()
                * Math.sin(numbers.runner().jetAngle());
        return EquivalentBearingLoad.of(radial, Math.abs(axial), EquivalentBearingLoad.DEEP_GROOVE_X, 1.6);
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
            double load = load(j, bearings, running);
            double speed = running.operation().speed();
            if (load > 0 && speed > 0) {
                boolean roller = Boolean.TRUE.equals(bearings.roller());
                needed = Math.max(
                        needed,
                        BearingLife.neededRating(load, speed, j.limit("life").value(), roller));
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
