package org.leat.plant.solve;

import java.util.function.DoubleUnaryOperator;

/**
 * Narrows an interval about the greatest value of a function that rises to it and falls behind it, by golden section. A search
 * that needs few looks at a function that is dear.
 *
 * @param low lower end
 * @param high upper end
 */
record GoldenSection(double low, double high) {

    private static final double SHORTER = (3 - Math.sqrt(5)) / 2;

    /**
     * {@return the interval narrowed about the greatest value}
     *
     * @param tolerance width at the end over its upper end
     */
    static GoldenSection about(DoubleUnaryOperator function, double from, double to, double tolerance) {
        double low = from;
        double high = to;
        double a = low + SHORTER * (high - low);
        double b = high - SHORTER * (high - low);
        double atA = function.applyAsDouble(a);
        double atB = function.applyAsDouble(b);
        while (high - low > tolerance * high) {
            if (atA >= atB) {
                high = b;
                b = a;
                atB = atA;
                a = low + SHORTER * (high - low);
                atA = function.applyAsDouble(a);
            } else {
                low = a;
                a = b;
                atA = atB;
                b = high - SHORTER * (high - low);
                atB = function.applyAsDouble(b);
            }
        }
        return new GoldenSection(low, high);
    }

    double middle() {
        return 0.5 * (low + high);
    }
}
