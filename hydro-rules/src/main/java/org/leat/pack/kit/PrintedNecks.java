package org.leat.pack.kit;

import java.util.List;
import java.util.function.Function;
import org.leat.check.Judgement;
import org.leat.check.Spot;
import org.leat.design.Buckets;
import org.leat.plant.cases.Running;
import org.leat.plant.duties.BucketNeck;
import org.leat.plant.duties.BucketStrength;
import org.leat.quantity.Si;

/** When to look at the necks of printed buckets, running on the nozzle set that wears them most. The plant is solved. */
public final class PrintedNecks {

    private static final double YEAR = 365.25 * 86_400;

    private PrintedNecks() {}

    /**
     * {@return running time between two looks, s; at most a year, nil where the neck may break at once} Open at the spot for
     * the first number of the neck that the design does not state.
     */
    public static double interval(Judgement j, Spot spot) {
        BucketStrength strength = RunnerParts.strength(j, spot);
        BucketNeck neck = RunnerParts.neck(j, spot);
        return Worst.least(every(j, running -> neck.inspectionInterval(j.numbers(), running, strength)), t -> t);
    }

    /** {@return how often a bucket passes a jet in a year, as far as the hours are told} */
    public static double passesPerYear(Judgement j, Buckets buckets) {
        double time = Si.of(buckets.hoursPerYear(), YEAR);
        return Worst.most(every(j, running -> BucketNeck.passes(running, time)), passes -> passes);
    }

    private static List<Double> every(Judgement j, Function<Running, Double> of) {
        return j.solved().running().stream().map(of).toList();
    }
}
