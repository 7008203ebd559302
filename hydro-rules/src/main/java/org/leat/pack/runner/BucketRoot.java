package org.leat.pack.runner;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.BucketMaterials;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.RunnerParts;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.duties.BucketNeck;
import org.leat.plant.duties.BucketStrength;
import org.leat.plant.numbers.PlantNumbers;

/** Stress in the neck that carries one bucket: jammed once, and at every passing for years. */
final class BucketRoot {

    private static final String PATH = "/runner/buckets/root-thickness";

    static final Rule RULE = Rule.of("runner/bucket-root", ERROR, "stress in the bucket's neck")
            .why(
                    "Each bucket is hit a thousand million times a year. A neck that holds the jet once cracks when it is hit"
                            + " that often, and a bucket that breaks off takes the next ones with it.")
            .formula("σ = 6 F l/(b h²) + m R ω²/(b h); jammed: F = ρ A V² (1 + κ), ω = 0, limit half the strength;"
                    + " running: F = ρ A (V − U)² (1 + κ), limit the fatigue strength; wet and warm")
            .judged("the wheel jammed in the jet, and running; on the nozzle set with the strongest jet")
            .source("momentum and beam theory, any text")
            .source(COMMON_PRACTICE)
            .either("holds", "breaks", "The bucket's neck sees {value:MPa}; it may see {limit:MPa}.")
            .fails("too-warm", "At {temperature:°C} the buckets' material does not hold its shape.")
            .judgeAll(BucketRoot::judge)
            .leastWayOut("thicker", "A neck {thickness:mm} thick along the jet.", BucketRoot::thicker)
            .wayOut("stronger", BucketMaterials.OF_MATERIAL, BucketMaterials::materials)
            .build();

    private BucketRoot() {}

    private static List<Outcome> judge(Judgement j) {
        BucketStrength strength = RunnerParts.strength(j, j.at("/"));
        List<Running> running = j.solved().running();
        BucketNeck neck = RunnerParts.neck(j, j.at("/runner/buckets"));
        Spot spot = j.at(PATH);
        if (strength.allowedOnce().isEmpty() || strength.allowedAlways().isEmpty()) {
            return List.of(
                    spot.with("temperature", strength.hottest(), TEMPERATURE).says("too-warm"));
        }
        PlantNumbers numbers = j.numbers();
        Running jammed = Worst.most(running, r -> neck.jammed(numbers, r));
        Running turning = Worst.most(running, r -> neck.turning(numbers, r));
        double once = strength.allowedOnce().getAsDouble();
        double always = strength.allowedAlways().getAsDouble();
        return List.of(
                spot.during("jammed/" + jammed.nozzles().name()).atMost(neck.jammed(numbers, jammed), once, PRESSURE),
                spot.during(turning).atMost(neck.turning(numbers, turning), always, PRESSURE));
    }

    private static Stream<Change> thicker(Judgement j, Outcome.Fail failure) {
        double now = Math.ceil(RunnerParts.neck(j, j.at(PATH)).thickness() * 1000);
        return Stream.iterate(now + 1, t -> t <= 3 * now, t -> t + 1)
                .map(t -> FieldChanges.told(PATH, "thickness", t, "mm", Length.class));
    }
}
