package org.leat.sure;

import java.util.List;

/**
 * Law of propagation of uncertainty, first order, by computing again: u² = Σ (c u)² over independent inputs, c the slope between
 * the results with one input moved either way. Exact for what is straight in its inputs; how much each is bent is kept, since at
 * a stationary point the first order sees nothing.
 *
 * <p>Source: JCGM 100:2008, 5.1.2, and 5.1.3 note 2 for slopes by computing again (from memory).
 */
final class FirstOrder {

    private FirstOrder() {}

    /**
     * What one input does.
     *
     * @param contribution change of the result by one standard uncertainty of the input, with its sign
     * @param bend how far the result at the value taken is from the straight line between the two others
     */
    record Slope(double contribution, double bend) {}

    /** A result with its input: moved down, as taken, moved up; {@code low.x < high.x}. */
    record At(double x, double result) {}

    /** {@return what an input does, solved at three places} */
    static Slope slope(At low, At taken, At high, double uncertainty) {
        if (!(low.x < high.x && low.x <= taken.x && taken.x <= high.x)) {
            throw new IllegalArgumentException(low + ", " + taken + ", " + high);
        }
        double slope = (high.result - low.result) / (high.x - low.x);
        double straight = low.result + slope * (taken.x - low.x);
        return new Slope(slope * uncertainty, taken.result - straight);
    }

    /** {@return standard uncertainty of a result with these slopes} */
    static double uncertainty(List<Slope> slopes) {
        return Math.sqrt(slopes.stream()
                .mapToDouble(s -> s.contribution * s.contribution)
                .sum());
    }

    /** {@return the same with every bend counted as if it were a contribution: what may hide where the result is not straight} */
    static double withBends(List<Slope> slopes) {
        return Math.sqrt(slopes.stream()
                .mapToDouble(s -> s.contribution * s.contribution + s.bend * s.bend)
                .sum());
    }
}
