package org.leat.sure;

/**
 * A quantity of which only the ends are known: anything between them alike. u = (high − low)/√12, in the quantity's unit, for
 * low ≤ high; the same where the value taken is not in the middle.
 *
 * <p>Source: JCGM 100:2008, 4.3.7 (half-width a: u = a/√3) and 4.3.8 (from memory).
 */
final class Rectangular {

    private Rectangular() {}

    /** {@return the standard uncertainty} */
    static double standardUncertainty(double low, double high) {
        if (!(low <= high)) {
            throw new IllegalArgumentException(low + " to " + high);
        }
        return (high - low) / Math.sqrt(12);
    }
}
