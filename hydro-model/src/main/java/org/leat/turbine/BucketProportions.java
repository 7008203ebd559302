package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Size of a split double bucket against its jet.
 *
 * <p>Width, length and depth [m], inside, over jet diameter [m] (the jet, not the bore). Usual: width 2.8 to 3.6, length
 * 2.3 to 2.8, depth 0.8 to 1.0; smaller buckets spill, larger ones only drag. Valid for all physical inputs. Source of
 * the ranges: handbooks, as Nechleba, Hydraulic Turbines (from memory). Other types: {@link RunnerType}.
 */
public final class BucketProportions {

    private BucketProportions() {}

    /** Usual width over jet diameter. */
    public static final RunnerType.Span USUAL_WIDTH = RunnerType.PELTON.bucketWidthRatio();

    /** Usual length over jet diameter. */
    public static final RunnerType.Span USUAL_LENGTH = new RunnerType.Span(2.3, 2.8);

    /** Usual depth over jet diameter. */
    public static final RunnerType.Span USUAL_DEPTH = new RunnerType.Span(0.8, 1.0);

    /** {@return a size of the bucket over jet diameter [1]} */
    public static double ratio(double size, double jetDiameter) {
        return Physical.positive("size", size) / Physical.positive("jetDiameter", jetDiameter);
    }

    /** {@return greatest jet for a bucket of this width [m]: the type's least width ratio} */
    public static double greatestJet(RunnerType type, double width) {
        return Physical.positive("width", width) / type.bucketWidthRatio().low();
    }
}
