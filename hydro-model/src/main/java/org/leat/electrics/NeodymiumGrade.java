package org.leat.electrics;

/**
 * Highest working temperature of neodymium magnets by the letters of their grade. A reference value: a thin magnet in an
 * open circuit stands less. The magnet, not the winding, limits an unknown motor.
 *
 * <p>Source: supplier's table "temperature type", www.supermagnete.de/eng/faq/temperature.
 */
public enum NeodymiumGrade {
    /** 80 °C, no letter or N. */
    N(80),
    /** 100 °C. */
    M(100),
    /** 120 °C. */
    H(120),
    /** 150 °C. */
    SH(150),
    /** 180 °C. */
    UH(180),
    /** 200 °C. */
    EH(200);

    private final double limit;

    NeodymiumGrade(double limit) {
        this.limit = limit;
    }

    /** {@return highest temperature of the magnet, °C} */
    public double limit() {
        return limit;
    }
}
