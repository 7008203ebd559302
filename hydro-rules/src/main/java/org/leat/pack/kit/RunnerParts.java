package org.leat.pack.kit;

import org.jspecify.annotations.Nullable;
import org.leat.catalogue.tables.RunnerMaterial;
import org.leat.check.Judgement;
import org.leat.check.Spot;
import org.leat.design.Bearings;
import org.leat.design.Buckets;
import org.leat.design.Runner;
import org.leat.plant.duties.BearingDuty;
import org.leat.plant.duties.BucketNeck;
import org.leat.plant.duties.BucketStrength;

/** Parts of the runner, as far as the design states them. */
public final class RunnerParts {

    /** Where the material of the buckets stands. */
    public static final String MATERIAL = "/runner/buckets/material";

    private RunnerParts() {}

    public static @Nullable Buckets buckets(Judgement j) {
        Runner runner = j.design().runner();
        return runner == null ? null : runner.buckets();
    }

    public static @Nullable Bearings bearings(Judgement j) {
        Runner runner = j.design().runner();
        return runner == null ? null : runner.bearings();
    }

    /** {@return what the buckets stand; open where no material is named, at the spot, or no table knows it} */
    public static BucketStrength strength(Judgement j, Spot spot) {
        Buckets buckets = buckets(j);
        String name = spot.given(MATERIAL, buckets == null ? null : buckets.material());
        return j.at(MATERIAL)
                .tabled(
                        name,
                        BucketStrength.of(buckets, j.numbers().site()),
                        RunnerMaterial.all().stream().map(RunnerMaterial::name));
    }

    /** {@return the neck of a bucket; open at the spot for the first size that the design does not state} */
    public static BucketNeck neck(Judgement j, Spot spot) {
        Buckets buckets = spot.given("/runner/buckets", buckets(j));
        return new BucketNeck(
                spot.si("/runner/buckets/root-width", buckets.rootWidth()),
                spot.si("/runner/buckets/root-thickness", buckets.rootThickness()),
                spot.si("/runner/buckets/lever-arm", buckets.leverArm()),
                spot.si("/runner/buckets/mass", buckets.mass()));
    }

    /** {@return how the runner is carried by its shaft; open at the spot for the first number that the design does not state} */
    public static BearingDuty.Shaft shaft(Judgement j, Spot spot) {
        Runner runner = spot.given("/runner/bearings", j.design().runner());
        Bearings bearings = spot.given("/runner/bearings", runner.bearings());
        return new BearingDuty.Shaft(
                spot.si("/runner/mass", runner.mass()),
                spot.si("/runner/bearings/overhang", bearings.overhang()),
                spot.si("/runner/bearings/spacing", bearings.spacing()),
                Boolean.TRUE.equals(bearings.roller()));
    }
}
