package org.leat.hydraulics;

import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Pressure of the standard atmosphere: {@code p = 101 325 (1 - 0.0065 H / 288.15)^(g / (0.0065 R))} with H the
 * geopotential altitude, m; g = 9.80665 m/s²; R = 287.05287 J/(kg·K). Altitude h on a map turns into {@code H = r h / (r +
 * h)}, r = 6 356 766 m. The weather moves the true pressure by 3 % either way.
 *
 * <p>Valid from -2000 to 11 000 m; {@link IllegalArgumentException} outside. Source: ISO 2533:1975, equations 12 and 8.
 */
public final class AtmosphericPressure {

    private static final double EARTH_RADIUS = 6_356_766;
    private static final double LAPSE = 0.0065;
    private static final double EXPONENT = Gravity.STANDARD / (LAPSE * 287.05287);

    private AtmosphericPressure() {}

    /**
     * {@return pressure, Pa}
     *
     * @param altitude above the sea as maps give it, m
     */
    public static double atAltitude(double altitude) {
        Physical.within("altitude", altitude, -2000, 11_000);
        return atGeopotentialAltitude(EARTH_RADIUS * altitude / (EARTH_RADIUS + altitude));
    }

    /**
     * {@return pressure, Pa}
     *
     * @param altitude geopotential, m
     */
    public static double atGeopotentialAltitude(double altitude) {
        Physical.within("altitude", altitude, -2001, 11_000);
        return 101_325 * Math.pow(1 - LAPSE * altitude / 288.15, EXPONENT);
    }
}
