package org.leat.pack.runner;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.ROTATIONAL_SPEED;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Buckets;
import org.leat.pack.kit.BucketMaterials;
import org.leat.pack.kit.RunnerParts;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.LoadLost;
import org.leat.plant.duties.BucketNeck;
import org.leat.plant.duties.BucketStrength;

/** Stress of the spinning wheel at runaway against what its material may see once. */
final class RunawayStrength {

    static final Rule RULE = Rule.of("runner/runaway-strength", ERROR, "strength of the wheel at runaway")
            .why(
                    "When the load is lost the wheel runs to nearly twice its speed and pulls itself apart with four times the"
                            + " force. What flies off goes through a thin cover and a shin.")
            .formula("greater of: hoop stress ρ (ω D/2)² of the rim; root pull m ω² D/2 / (b h);"
                    + " limit = half the strength, wet and warm")
            .judged("load lost on the nozzle set with the highest runaway speed, the wheel as hot as it gets")
            .source("mechanics of a spinning ring, any text")
            .source(COMMON_PRACTICE)
            .either("holds", "bursts", "At runaway, {speed:rpm}, the wheel sees {value:MPa}; it may see {limit:MPa}.")
            .fails("too-warm", "At {temperature:°C} the wheel's material does not hold its shape.")
            .judge(RunawayStrength::judge)
            .wayOut("stronger", BucketMaterials.OF_MATERIAL, BucketMaterials::materials)
            .build();

    private RunawayStrength() {}

    private static Outcome judge(Judgement j) {
        BucketStrength strength = RunnerParts.strength(j, j.at("/"));
        LoadLost lost = Worst.most(j.solved().loadLost(), LoadLost::speed);
        Spot spot = j.at(RunnerParts.MATERIAL).during(lost);
        Buckets buckets = spot.given("/runner/buckets", RunnerParts.buckets(j));
        double mass = spot.si("/runner/buckets/mass", buckets.mass());
        double width = spot.si("/runner/buckets/root-width", buckets.rootWidth());
        double thickness = spot.si("/runner/buckets/root-thickness", buckets.rootThickness());
        if (strength.allowedOnce().isEmpty()) {
            return spot.with("temperature", strength.hottest(), TEMPERATURE).says("too-warm");
        }
        double stress = new BucketNeck(width, thickness, 0, mass)
                .runAway(j.numbers(), lost, strength.material().density());
        return spot.with("speed", lost.speed(), ROTATIONAL_SPEED)
                .atMost(stress, strength.allowedOnce().getAsDouble(), PRESSURE);
    }
}
