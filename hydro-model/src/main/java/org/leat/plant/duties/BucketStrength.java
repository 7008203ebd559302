package org.leat.plant.duties;

import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.tables.RunnerMaterial;
import org.leat.design.Buckets;
import org.leat.law.Answer;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.quantity.Si;
import org.leat.turbine.FatigueAllowance;
import org.leat.turbine.ThermalDerating;

/**
 * What the material of the buckets stands where they work, wet and as hot as the wheel gets. A test bar of one's own goes
 * before the table; printed layers are taken to lie across the bending unless the design states that they do not.
 *
 * @param material as tabled
 * @param strength static, in the direction that the neck is bent, dry and at room temperature, Pa
 * @param hottest the wheel gets, in water or in still air, K
 */
public record BucketStrength(RunnerMaterial material, double strength, double hottest) {

    /** {@return the strength; empty where no material is named or no table knows its name} */
    public static Optional<BucketStrength> of(@Nullable Buckets buckets, SiteNumbers site) {
        if (buckets == null || buckets.material() == null) {
            return Optional.empty();
        }
        boolean across = !Boolean.FALSE.equals(buckets.layersAcrossBending());
        double hottest = Math.max(site.highestWaterTemperature(), site.highestAirTemperature());
        return RunnerMaterial.find(buckets.material()).map(material -> {
            double usual = across ? material.strengthAcross() : material.strengthAlong();
            return new BucketStrength(material, Si.of(buckets.strength(), usual), hottest);
        });
    }

    /** {@return static strength wet and hot, Pa; empty where the material does not hold its shape} */
    public OptionalDouble wetAndWarm() {
        return times(strength * material.wetFactor());
    }

    /** {@return stress that a jam or a runaway may make once, Pa; empty where the material does not hold its shape} */
    public OptionalDouble allowedOnce() {
        return times(FatigueAllowance.STATIC * strength * material.wetFactor());
    }

    /** {@return stress that every passing of a jet may make, Pa; empty where the material does not hold its shape} */
    public OptionalDouble allowedAlways() {
        return warm() instanceof Answer.Value factor
                ? OptionalDouble.of(FatigueAllowance.stress(
                        strength, material.fatigueRatio(), material.wetFactor(), factor.value()))
                : OptionalDouble.empty();
    }

    private OptionalDouble times(double cold) {
        return warm() instanceof Answer.Value factor
                ? OptionalDouble.of(cold * factor.value())
                : OptionalDouble.empty();
    }

    /** The share of strength left at the hottest; outside where the material does not hold its shape. */
    private Answer warm() {
        return material.deflectionLow().isEmpty()
                ? Answer.of(1)
                : ThermalDerating.factor(hottest, material.deflectionLow().getAsDouble());
    }
}
