package org.leat.plant;

/** Temperatures in the trade's degrees. */
final class Celsius {

    private static final double ZERO = 273.15;

    private Celsius() {}

    /** {@return kelvins} */
    static double toKelvin(double celsius) {
        return celsius + ZERO;
    }

    /** {@return degrees Celsius} */
    static double of(double kelvin) {
        return kelvin - ZERO;
    }
}
