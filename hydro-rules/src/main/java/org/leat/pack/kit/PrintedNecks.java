package org.leat.pack.kit;

import java.util.Optional;
import java.util.stream.Stream;
import org.leat.check.Judgement;
import org.leat.design.Buckets;
import org.leat.plant.cases.BucketNeck;
import org.leat.plant.cases.BucketStrength;
import org.leat.plant.cases.Running;
import org.leat.quantity.Si;

/** When to look at the necks of printed buckets, running on the nozzles open as built. The plant is solved. */
public final class PrintedNecks {

    private static final double YEAR = 365.25 * 86_400;

    private PrintedNecks() {}

    /** {@return path of the first input that is not told; empty where an interval can be computed} */
    public static Optional<String> missing(Judgement j) {
        Buckets buckets = Wheel.buckets(j);
        return BucketStrength.of(buckets, j.numbers().site()).isEmpty() || buckets == null
                ? Optional.of(Wheel.MATERIAL)
                : Stream.of(
                                buckets.rootWidth() == null ? "/runner/buckets/root-width" : "",
                                buckets.rootThickness() == null ? "/runner/buckets/root-thickness" : "",
                                buckets.leverArm() == null ? "/runner/buckets/lever-arm" : "")
                        .filter(path -> !path.isEmpty())
                        .findFirst();
    }

    /** {@return running time between two looks, s; at most a year, nil where the neck may break at once} */
    public static double interval(Judgement j) {
        Buckets buckets = Wheel.buckets(j);
        Optional<BucketStrength> strength =
                BucketStrength.of(buckets, j.numbers().site());
        if (buckets == null || strength.isEmpty() || missing(j).isPresent()) {
            return 0;
        }
        BucketNeck neck = new BucketNeck(
                Si.of(buckets.rootWidth(), 1),
                Si.of(buckets.rootThickness(), 1),
                Si.of(buckets.leverArm(), 0),
                Si.of(buckets.mass(), 0));
        return neck.inspectionInterval(j.numbers(), running(j), strength.get());
    }

    /** {@return how often a bucket passes a jet in a year, as far as the hours are told} */
    public static double passesPerYear(Judgement j) {
        Buckets buckets = Wheel.buckets(j);
        return BucketNeck.passes(running(j), buckets == null ? YEAR : Si.of(buckets.hoursPerYear(), YEAR));
    }

    private static Running running(Judgement j) {
        return j.solved().running().get(0);
    }
}
