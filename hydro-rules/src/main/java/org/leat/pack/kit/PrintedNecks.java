package org.leat.pack.kit;

import org.leat.check.Judgement;
import org.leat.check.Spot;
import org.leat.design.Buckets;
import org.leat.plant.cases.Running;
import org.leat.plant.duties.BucketNeck;
import org.leat.plant.duties.BucketStrength;
import org.leat.quantity.Si;

/** When to look at the necks of printed buckets, running on the nozzles open as built. The plant is solved. */
public final class PrintedNecks {

    private static final double YEAR = 365.25 * 86_400;

    private PrintedNecks() {}

    /**
     * {@return running time between two looks, s; at most a year, nil where the neck may break at once} Open at the spot for
     * the first number of the neck that the design does not state.
     */
    public static double interval(Judgement j, Spot spot) {
        BucketStrength strength = Wheel.strength(j, spot);
        BucketNeck neck = Wheel.neck(j, spot);
        return neck.inspectionInterval(j.numbers(), running(j), strength);
    }

    /** {@return how often a bucket passes a jet in a year, as far as the hours are told} */
    public static double passesPerYear(Judgement j, Buckets buckets) {
        return BucketNeck.passes(running(j), Si.of(buckets.hoursPerYear(), YEAR));
    }

    private static Running running(Judgement j) {
        return j.solved().running().get(0);
    }
}
