package org.leat.catalogue.tables;

import org.leat.law.Physical;

/**
 * Diameter and area of American Wire Gauge conductors: d = 0.127 mm · 92^((36 − n)/39), by which gauge 36 is 0.005 inch and
 * gauge 4/0 is 0.46 inch. Gauges 1/0, 2/0, 3/0, 4/0 are n = 0, −1, −2, −3. Range: −3 to 40.
 *
 * <p>Source: ASTM B258 (formula from memory). The area of a stranded conductor of the same gauge is the sum of its wires.
 */
public final class AmericanWireGauge {

    private AmericanWireGauge() {}

    /** {@return diameter of solid round wire of gauge n, m} */
    public static double diameter(int gauge) {
        Physical.within("gauge", gauge, -3, 40);
        return 0.127e-3 * Math.pow(92, (36.0 - gauge) / 39);
    }

    /** {@return area of gauge n, m²} */
    public static double area(int gauge) {
        double diameter = diameter(gauge);
        return Math.PI / 4 * diameter * diameter;
    }
}
