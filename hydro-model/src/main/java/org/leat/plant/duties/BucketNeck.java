package org.leat.plant.duties;

import java.util.OptionalDouble;
import org.leat.law.Answer;
import org.leat.plant.cases.LoadLost;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solved.WaterSide.Jet;
import org.leat.turbine.BucketLoadCycles;
import org.leat.turbine.BucketRootStress;
import org.leat.turbine.CentrifugalForce;
import org.leat.turbine.CyclesToCrack;
import org.leat.turbine.InspectionInterval;
import org.leat.turbine.JetForce;
import org.leat.turbine.RimStress;

/**
 * The neck that carries one bucket.
 *
 * @param width across the bending, m
 * @param thickness along the bending, m
 * @param leverArm from the jet's centre to the neck, m; not used where nothing strikes the bucket
 * @param mass of one bucket, kg
 */
public record BucketNeck(double width, double thickness, double leverArm, double mass) {

    private static final double YEAR = 365.25 * 86_400;

    /** {@return greatest stress where the wheel is jammed and the strongest jet strikes, Pa} */
    public double jammed(PlantNumbers numbers, Running running) {
        return struck(numbers, running, 0);
    }

    /** {@return greatest stress at every passing of the strongest jet, Pa} */
    public double turning(PlantNumbers numbers, Running running) {
        return struck(numbers, running, running.operatingPoint().speed());
    }

    private double struck(PlantNumbers numbers, Running running, double speed) {
        double radius = numbers.runner().pitchDiameter() / 2;
        double factor = Math.min(1, Math.max(0, numbers.runner().returnFactor()));
        double force = 0;
        for (Jet jet : running.water().jets()) {
            double area = Math.PI / 4 * jet.diameter() * jet.diameter();
            force = Math.max(
                    force, JetForce.running(numbers.water().density(), area, jet.velocity(), speed * radius, factor));
        }
        return BucketRootStress.combined(force, leverArm, width, thickness, CentrifugalForce.of(mass, radius, speed));
    }

    /** {@return the greater of the rim's hoop stress and the pull in the neck when the wheel has run away, Pa} */
    public double runAway(PlantNumbers numbers, LoadLost lost, double density) {
        double radius = numbers.runner().pitchDiameter() / 2;
        double pull = BucketRootStress.pull(CentrifugalForce.of(mass, radius, lost.speed()), width, thickness);
        return Math.max(RimStress.of(density, lost.speed() * radius), pull);
    }

    /**
     * {@return running time between two looks for cracks, s} At most a year; nil where the neck may break at once. See
     * {@link CyclesToCrack} and {@link InspectionInterval}.
     */
    public double inspectionInterval(PlantNumbers numbers, Running running, BucketStrength strength) {
        double speed = running.operatingPoint().speed();
        OptionalDouble once = strength.wetAndWarm();
        OptionalDouble always = strength.allowedAlways();
        double stress = speed > 0 ? turning(numbers, running) : 0;
        if (once.isEmpty() || always.isEmpty() || !(stress > 0)) {
            return 0;
        }
        Answer cycles = CyclesToCrack.of(
                stress,
                once.getAsDouble(),
                always.getAsDouble(),
                strength.material().fatigueCycles());
        return cycles instanceof Answer.Value known
                ? Math.min(
                        YEAR,
                        InspectionInterval.of(
                                known.value(), running.water().jets().size(), speed))
                : 0;
    }

    /** {@return how often a bucket passes a jet in a running time, s} */
    public static double passes(Running running, double time) {
        return BucketLoadCycles.of(
                running.water().jets().size(), running.operatingPoint().speed(), time);
    }
}
