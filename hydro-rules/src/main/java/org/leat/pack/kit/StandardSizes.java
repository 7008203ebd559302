package org.leat.pack.kit;

import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.leat.check.Change;
import org.leat.check.Change.Changes;

/** Series in which parts are sold: what a way out names can be bought. */
public final class StandardSizes {

    private static final double[] DIRECT_VOLTS = {
        12, 24, 36, 48, 60, 75, 100, 150, 200, 250, 300, 400, 500, 600, 800, 1000
    };

    /** Preferred numbers of IEC 60063, E24. */
    private static final double[] E24 = {
        1, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2, 2.2, 2.4, 2.7, 3, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2, 9.1
    };

    /** Standard dimension ratios of ISO 4065 as pipe is sold. */
    private static final double[] SDR = {6, 7.4, 9, 11, 13.6, 17, 21, 26, 33, 41};

    /** Dynamic ratings, N, of deep groove ball bearings 608, 6000 to 6005 and 6202 to 6212: makers' tables (from memory). */
    private static final double[] BEARINGS = {
        3450, 4750, 5400, 5850, 6370, 8060, 9950, 11_900, 14_800, 20_300, 27_000, 32_500, 35_100, 37_100, 46_200, 55_300
    };

    private StandardSizes() {}

    /** {@return the least direct voltage of the usual ratings that is no less, V; empty beyond them} */
    public static OptionalDouble volts(double least) {
        return next(least, DIRECT_VOLTS);
    }

    /**
     * {@return advice of what stands the voltage that failed: the least of the usual ratings}
     *
     * @param name under which the rating is told
     */
    public static Changes standing(String name) {
        return (j, failure) -> volts(failure.value()).stream()
                .mapToObj(volts -> Change.advice().with(name, volts, VOLTAGE));
    }

    /** {@return the rating of the smallest ball bearing that has no less, N; empty beyond the list} */
    public static OptionalDouble bearing(double least) {
        return next(least, BEARINGS);
    }

    /** {@return the greatest standard dimension ratio that is no more; empty where no pipe is that thick} */
    public static OptionalDouble dimensionRatio(double most) {
        return DoubleStream.of(SDR).filter(ratio -> ratio <= most).max();
    }

    /** {@return the greatest resistance of the E24 series that is no more, Ω} Above nought. */
    public static double resistance(double most) {
        double decade = Math.pow(10, Math.floor(Math.log10(most)));
        double within = most / decade * (1 + 1e-9);
        double preferred = DoubleStream.of(E24).filter(r -> r <= within).max().orElse(1);
        return Math.rint(preferred * decade * 1e6) / 1e6;
    }

    /** {@return rating of a direct-current switch for a current, A, with a quarter of room, in steps of five} */
    public static double switchRating(double current) {
        return Math.ceil(1.25 * current / 5 - 1e-9) * 5;
    }

    private static OptionalDouble next(double least, double... series) {
        return DoubleStream.of(series).filter(size -> size >= least).findFirst();
    }
}
