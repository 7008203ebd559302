package org.leat.pack;

import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.RunnerMaterial;
import org.leat.check.Arg;
import org.leat.check.CommonMessages;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.design.Buckets;
import org.leat.design.Runner;
import org.leat.law.Answer;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.quantity.Si;
import org.leat.turbine.FatigueAllowance;
import org.leat.turbine.ThermalDerating;

/**
 * What the buckets are made of, as far as the design tells: a test bar of one's own goes before the table.
 *
 * @param strength static, in the direction that the neck is bent, Pa
 * @param density kg/m³
 * @param fatigueRatio fatigue over static strength
 * @param fatigueCycles at which that holds
 * @param wetFactor strength wet over dry
 * @param deflection heat deflection temperature, K; null for metals
 * @param waterUptake mass fraction at saturation
 */
record BucketMaterial(
        double strength,
        double density,
        double fatigueRatio,
        double fatigueCycles,
        double wetFactor,
        @Nullable Double deflection,
        double waterUptake) {

    static final String PATH = "/runner/buckets/material";

    /** {@return the material; null where none is named or tabled} */
    static @Nullable BucketMaterial of(Judgement j) {
        Runner runner = j.design().runner();
        Buckets buckets = runner == null ? null : runner.buckets();
        if (buckets == null || buckets.material() == null) {
            return null;
        }
        RunnerMaterial tabled = RunnerMaterial.find(buckets.material()).orElse(null);
        if (tabled == null) {
            return null;
        }
        boolean across = !Boolean.FALSE.equals(buckets.layersAcrossBending());
        double usual = across ? tabled.strengthAcross() : tabled.strengthAlong();
        return new BucketMaterial(
                Si.of(buckets.strength(), usual),
                tabled.density(),
                tabled.fatigueRatio(),
                tabled.fatigueCycles(),
                tabled.wetFactor(),
                tabled.deflectionLow(),
                tabled.waterUptake());
    }

    /** {@return open, because no material is named or no table knows its name} */
    static Outcome unknown(Judgement j, String at) {
        Runner runner = j.design().runner();
        Buckets buckets = runner == null ? null : runner.buckets();
        if (buckets == null || buckets.material() == null) {
            return j.at(at).notGiven(PATH);
        }
        String known = RunnerMaterial.all().stream().map(RunnerMaterial::name).collect(Collectors.joining(", "));
        return j.at(PATH)
                .open(
                        PATH,
                        CommonMessages.NOT_TABLED,
                        Arg.at("field", PATH),
                        Arg.of("found", buckets.material()),
                        Arg.of("known", known));
    }

    /** {@return the share of strength left at the hottest the wheel gets; outside where it does not hold its shape} */
    Answer warm(Judgement j) {
        return deflection == null ? Answer.of(1) : ThermalDerating.factor(hottest(j), deflection);
    }

    /** {@return the hottest the wheel gets, in water or in still air, K} */
    static double hottest(Judgement j) {
        SiteNumbers site = j.plant().numbers().site();
        return Math.max(site.highestWaterTemperature(), site.highestAirTemperature());
    }

    /** {@return stress that a jam may make once, Pa} */
    double allowedOnce(double warm) {
        return FatigueAllowance.STATIC * strength * wetFactor * warm;
    }

    /** {@return stress that every bucket passing may make, Pa} */
    double allowedAlways(double warm) {
        return FatigueAllowance.stress(strength, fatigueRatio, wetFactor, warm);
    }
}
