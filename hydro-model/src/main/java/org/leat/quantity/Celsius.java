package org.leat.quantity;

/** Temperatures in the trade's degrees. */
public final class Celsius {

    private static final double ZERO = 273.15;

    private Celsius() {}

    /** {@return kelvins} */
    public static double toKelvin(double celsius) {
        return celsius + ZERO;
    }

    /** {@return degrees Celsius} */
    public static double of(double kelvin) {
        return kelvin - ZERO;
    }
}
