package org.leat.electrics;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Inductance of a run of wires: of ONE conductor, line to neutral, {@code L = K + 0.2 ln(2 S/d)} µH/m, with the spacing S of centres,
 * the conductor's diameter d, and K for the field within the conductor by its number of wires. Three in a row: S = 1.26 times the
 * spacing of neighbours. Cores of a circular multi-core cable: times 1.02. A two-wire run has twice it per metre of run; a run of
 * three phases adds it to each phase of a star winding. Round figures: 0.3 µH/m in a cable, 1 µH/m for open wire 0.3 m apart.
 *
 * <p>Range: spacings no less than the conductor's diameter; below that {@link Answer.Outside}. No steel nearby, low frequency (at 400
 * Hz K falls by some per cent). Source: a cable handbook's formula with its table of K (read; another copy swaps 7 and 19 wires);
 * two-wire line 1e-7·(1 + 4 ln(D/r)) H/m: Mehta, Principles of Power System, ch. 9.
 */
public final class RunInductance {

    /** Factor of the cores of a circular multi-core cable. */
    public static final double MULTICORE = 1.02;

    /** Equivalent spacing of three conductors in a row over that of neighbours: the cube root of two. */
    public static final double FLAT = 1.26;

    private static final int[] WIRES = {61, 37, 19, 7, 3};
    private static final double[] INTERNAL = {0.0514e-6, 0.0528e-6, 0.0554e-6, 0.0642e-6, 0.0778e-6};
    private static final double SOLID = 0.05e-6;

    private RunInductance() {}

    /** {@return K, H/m, of a conductor of so many wires} A number between two of the table has that of the fewer, which is more. */
    public static double internal(int wires) {
        Physical.positive("wires", wires);
        for (int i = 0; i < WIRES.length; i++) {
            if (wires >= WIRES[i]) {
                return INTERNAL[i];
            }
        }
        return wires == 1 ? SOLID : INTERNAL[WIRES.length - 1];
    }

    /**
     * {@return inductance of one conductor, H/m}
     *
     * @param internal K, H/m
     * @param spacing of centres, m
     * @param diameter of the bare conductor, m
     */
    public static Answer perConductor(double internal, double spacing, double diameter) {
        Physical.notNegative("internal", internal);
        Physical.positive("spacing", spacing);
        Physical.positive("diameter", diameter);
        return spacing < diameter
                ? Answer.below("inductance of a run of wires", "spacing", spacing, diameter, "m")
                : Answer.of(internal + 0.2e-6 * Math.log(2 * spacing / diameter));
    }

    /** {@return inductance of a two-wire run, H: there and back} Length of the run in m. */
    public static double twoWire(double perConductor, double length) {
        return 2 * perPhase(perConductor, length);
    }

    /** {@return what a run of three phases adds to each phase of a star winding, H} Length of the run in m. */
    public static double perPhase(double perConductor, double length) {
        return Physical.notNegative("perConductor", perConductor) * Physical.notNegative("length", length);
    }
}
