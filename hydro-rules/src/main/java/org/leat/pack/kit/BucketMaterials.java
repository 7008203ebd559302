package org.leat.pack.kit;

import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.tables.RunnerMaterial;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.design.Buckets;

/** Buckets of another make. */
public final class BucketMaterials {

    /** What {@link #materials} says. */
    public static final String OF_MATERIAL = "Buckets of {material}.";

    private BucketMaterials() {}

    /** {@return every tabled material, printed ones before cast and machined ones; told with {@code material}} */
    public static Stream<Change> materials(Judgement j, Outcome.Fail failure) {
        return RunnerMaterial.all().stream().map(material -> of(RunnerParts.buckets(j), material));
    }

    private static Change of(@Nullable Buckets now, RunnerMaterial material) {
        Change change = Change.of(RunnerParts.MATERIAL, material.name())
                .and("/runner/buckets/making", material.making())
                .with("material", material.name());
        return now == null || now.strength() == null ? change : change.and("/runner/buckets/strength", null);
    }
}
