package org.leat.quantity;

import org.apiguardian.api.API;

/** Temperatures in the trade's degrees. */
@API(status = API.Status.STABLE, since = "0.1")
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
