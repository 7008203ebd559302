package org.leat.electrics;

/** One period of a sine in equal steps. Immutable once made: its arrays are read in this package only. */
final class Sines {

    private final double[] whole;
    private final double[] between;

    /** @param steps of a period, a multiple of three */
    Sines(int steps) {
        whole = new double[steps];
        between = new double[steps];
        for (int k = 0; k < steps; k++) {
            whole[k] = Math.sin(2 * Math.PI * k / steps);
            between[k] = Math.sin(2 * Math.PI * (k - 0.5) / steps);
        }
    }

    /** {@return sines at the end of each step, that of a whole period first} */
    double[] whole() {
        return whole;
    }

    /** {@return sines in the middle of the same steps} */
    double[] between() {
        return between;
    }

    /** {@return the step at which a phase a third of a period behind stands} */
    int third(int step) {
        int third = whole.length / 3;
        return step >= third ? step - third : step + whole.length - third;
    }
}
