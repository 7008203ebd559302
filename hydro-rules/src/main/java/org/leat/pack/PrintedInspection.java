package org.leat.pack;

import org.jspecify.annotations.Nullable;
import org.leat.check.Judgement;
import org.leat.design.Buckets;
import org.leat.design.Runner;
import org.leat.law.Answer;
import org.leat.plant.cases.Running;
import org.leat.plant.solve.Jet;
import org.leat.quantity.Si;
import org.leat.turbine.BucketLoadCycles;
import org.leat.turbine.BucketRootStress;
import org.leat.turbine.CentrifugalForce;
import org.leat.turbine.CyclesToCrack;
import org.leat.turbine.InspectionInterval;
import org.leat.turbine.JetForce;

/** When to look at printed buckets. */
final class PrintedInspection {

    private static final double YEAR = 365.25 * 86400;

    private PrintedInspection() {}

    /** {@return running time between two looks, s; at most a year, and none where the neck may break at once} */
    static double interval(Judgement j) {
        BucketMaterial material = BucketMaterial.of(j);
        Runner runner = j.design().runner();
        Running running = j.cases().running().get(0);
        double speed = running.operatingPoint().speed();
        if (material == null || runner == null || runner.buckets() == null || !(speed > 0)) {
            return 0;
        }
        double stress = stress(j, runner.buckets(), running, speed);
        if (!(stress > 0) || !(material.warm(j) instanceof Answer.Value warm)) {
            return 0;
        }
        double once = material.strength() * material.wetFactor() * warm.value();
        Answer cycles = CyclesToCrack.of(stress, once, material.allowedAlways(warm.value()), material.fatigueCycles());
        return cycles instanceof Answer.Value known
                ? Math.min(
                        YEAR,
                        InspectionInterval.of(
                                known.value(), running.water().jets().size(), speed))
                : 0;
    }

    /** {@return path of what is not told of printed buckets; null where an interval can be computed} */
    static @Nullable String missing(Judgement j, Buckets buckets) {
        if (BucketMaterial.of(j) == null) {
            return BucketMaterial.PATH;
        }
        if (buckets.rootWidth() == null) {
            return "/runner/buckets/root-width";
        }
        if (buckets.rootThickness() == null) {
            return "/runner/buckets/root-thickness";
        }
        return buckets.leverArm() == null ? "/runner/buckets/lever-arm" : null;
    }

    /** {@return how often a bucket passes a jet in a year, as far as the hours are told} */
    static double passesPerYear(Judgement j) {
        Runner runner = j.design().runner();
        Running running = j.cases().running().get(0);
        double time = runner == null || runner.buckets() == null
                ? YEAR
                : Si.of(runner.buckets().hoursPerYear(), YEAR);
        return BucketLoadCycles.of(
                running.water().jets().size(), running.operatingPoint().speed(), time);
    }

    private static double stress(Judgement j, Buckets buckets, Running running, double speed) {
        if (buckets.rootWidth() == null || buckets.rootThickness() == null || buckets.leverArm() == null) {
            return 0;
        }
        double radius = j.plant().numbers().runner().pitchDiameter() / 2;
        Jet jet = running.water().jets().get(0);
        double force = JetForce.running(
                j.plant().numbers().water().density(),
                Math.PI / 4 * jet.diameter() * jet.diameter(),
                jet.velocity(),
                speed * radius,
                Math.min(1, Math.max(0, j.plant().numbers().runner().returnFactor())));
        return BucketRootStress.combined(
                force,
                Si.of(buckets.leverArm()),
                Si.of(buckets.rootWidth()),
                Si.of(buckets.rootThickness()),
                CentrifugalForce.of(Si.of(buckets.mass(), 0), radius, speed));
    }
}
