package org.leat.pack;

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
import org.leat.design.Buckets;
import org.leat.design.Runner;
import org.leat.law.Answer;
import org.leat.plant.cases.LoadLost;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.turbine.BucketRootStress;
import org.leat.turbine.CentrifugalForce;
import org.leat.turbine.RimStress;

/** Stress of the spinning wheel at runaway against what its material may see once. */
final class RunnerRunawayStrength implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("runner/runaway-strength", Level.ERROR)
            .title("strength of the wheel at runaway")
            .why(
                    "When the load is lost the wheel runs to nearly twice its speed and pulls itself apart with four times the"
                            + " force. What flies off goes through a thin cover and a shin.")
            .formula("greater of: hoop stress ρ (ω D/2)² of the rim; root pull m ω² D/2 / (b h);"
                    + " limit = half the strength, wet and warm")
            .judged("load lost on the nozzle set with the highest runaway speed, the wheel as hot as it gets")
            .source("mechanics of a spinning ring, any text")
            .source(RuleCard.COMMON_PRACTICE)
            .message("holds", "speed")
            .message("bursts", "speed")
            .message("too-warm", "temperature")
            .message("stronger", "material")
            .build();

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
        if (j.cases().loadLost().isEmpty()) {
            return Open.unsolved(j);
        }
        LoadLost lost = Worst.most(j.cases().loadLost(), LoadLost::speed);
        Spot spot = j.at(BucketMaterial.PATH).during(lost);
        Buckets buckets = runner.buckets();
        if (buckets.mass() == null) {
            return List.of(spot.notGiven("/runner/buckets/mass"));
        }
        if (buckets.rootWidth() == null || buckets.rootThickness() == null) {
            return List.of(
                    spot.notGiven("/runner/buckets/root-" + (buckets.rootWidth() == null ? "width" : "thickness")));
        }
        if (!(material.warm(j) instanceof Answer.Value warm)) {
            return List.of(
                    spot.fail("too-warm", Arg.of("temperature", BucketMaterial.hottest(j), QuantityKind.TEMPERATURE)));
        }
        double radius = Si.of(runner.pitchDiameter()) / 2;
        double hoop = RimStress.of(material.density(), lost.speed() * radius);
        double pull = BucketRootStress.pull(
                CentrifugalForce.of(Si.of(buckets.mass()), radius, lost.speed()),
                Si.of(buckets.rootWidth()),
                Si.of(buckets.rootThickness()));
        return List.of(spot.compare(
                Comparison.atMost(Math.max(hoop, pull), material.allowedOnce(warm.value()), QuantityKind.PRESSURE),
                "holds",
                "bursts",
                Arg.of("speed", lost.speed(), QuantityKind.ROTATIONAL_SPEED)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return StrongerBuckets.material(this, j, failure).stream().toList();
    }
}
