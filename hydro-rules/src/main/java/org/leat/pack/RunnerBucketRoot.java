package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
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
import org.leat.design.Buckets;
import org.leat.design.Runner;
import org.leat.law.Answer;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solve.Jet;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.turbine.BucketRootStress;
import org.leat.turbine.CentrifugalForce;
import org.leat.turbine.JetForce;

/** Stress in the neck that carries one bucket: jammed once, and at every passing for years. */
final class RunnerBucketRoot implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("runner/bucket-root", Level.ERROR)
            .title("stress in the bucket's neck")
            .why(
                    "Each bucket is hit a thousand million times a year. A neck that holds the jet once cracks when it is hit"
                            + " that often, and a bucket that breaks off takes the next ones with it.")
            .formula("σ = 6 F l/(b h²) + m R ω²/(b h); jammed: F = ρ A V² (1 + κ), ω = 0, limit half the strength;"
                    + " running: F = ρ A (V − U)² (1 + κ), limit the fatigue strength; wet and warm")
            .judged("the wheel jammed in the jet, and running; on the nozzle set with the strongest jet")
            .source("momentum and beam theory, any text")
            .source(RuleCard.COMMON_PRACTICE)
            .message("holds")
            .message("breaks")
            .message("too-warm", "temperature")
            .message("stronger", "material")
            .message("thicker", "thickness")
            .build();

    private static final String PATH = "/runner/buckets/root-thickness";

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Runner runner = j.design().runner();
        BucketMaterial material = BucketMaterial.of(j);
        if (runner == null || runner.buckets() == null || material == null) {
            return List.of(BucketMaterial.unknown(j, "/"));
        }
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Buckets buckets = runner.buckets();
        String missing = missing(buckets);
        if (missing != null) {
            return List.of(j.at("/runner/buckets").notGiven("/runner/buckets/" + missing));
        }
        if (!(material.warm(j) instanceof Answer.Value warm)) {
            Arg hot = Arg.of("temperature", BucketMaterial.hottest(j), QuantityKind.TEMPERATURE);
            return List.of(j.at(PATH).fail("too-warm", hot));
        }
        Running jammed = Worst.most(j.cases().running(), r -> stress(j, buckets, r, false));
        Running turning = Worst.most(j.cases().running(), r -> stress(j, buckets, r, true));
        return List.of(
                outcome(
                        j.at(PATH).during("jammed/" + jammed.nozzles().name()),
                        stress(j, buckets, jammed, false),
                        material.allowedOnce(warm.value())),
                outcome(
                        j.at(PATH).during(turning),
                        stress(j, buckets, turning, true),
                        material.allowedAlways(warm.value())));
    }

    private static Outcome outcome(Spot spot, double stress, double allowed) {
        return spot.compare(Comparison.atMost(stress, allowed, QuantityKind.PRESSURE), "holds", "breaks");
    }

    private static @Nullable String missing(Buckets buckets) {
        if (buckets.rootWidth() == null) {
            return "root-width";
        }
        if (buckets.rootThickness() == null) {
            return "root-thickness";
        }
        return buckets.leverArm() == null ? "lever-arm" : buckets.mass() == null ? "mass" : null;
    }

    private static double stress(Judgement j, Buckets buckets, Running running, boolean turning) {
        PlantNumbers numbers = j.plant().numbers();
        double radius = numbers.runner().pitchDiameter() / 2;
        double speed = turning ? running.operatingPoint().speed() : 0;
        double factor = Math.min(1, Math.max(0, numbers.runner().returnFactor()));
        double force = 0;
        for (Jet jet : running.water().jets()) {
            double area = Math.PI / 4 * jet.diameter() * jet.diameter();
            force = Math.max(
                    force, JetForce.running(numbers.water().density(), area, jet.velocity(), speed * radius, factor));
        }
        return BucketRootStress.combined(
                force,
                Si.of(buckets.leverArm(), 0),
                Si.of(buckets.rootWidth(), 1),
                Si.of(buckets.rootThickness(), 1),
                CentrifugalForce.of(Si.of(buckets.mass(), 0), radius, speed));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        Runner runner = j.design().runner();
        if (runner != null && runner.buckets() != null && runner.buckets().rootThickness() != null) {
            double now = Math.ceil(Si.of(runner.buckets().rootThickness()) * 1000);
            Search.least(
                            this,
                            j,
                            failure,
                            Stream.iterate(now + 1, t -> t <= 3 * now, t -> t + 1)
                                    .map(t -> Candidate.of(
                                            "thicker",
                                            new Edit(PATH, Si.quantity(t, "mm", Length.class)),
                                            Arg.of("thickness", t / 1000, QuantityKind.LENGTH))))
                    .ifPresent(ways::add);
        }
        StrongerBuckets.material(this, j, failure).ifPresent(ways::add);
        return ways;
    }
}
