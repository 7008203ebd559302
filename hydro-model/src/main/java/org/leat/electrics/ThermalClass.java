package org.leat.electrics;

/**
 * Thermal class of a winding's insulation, IEC 60085 (from memory), with the rise by resistance that IEC 60034-1 allows at 40 °C (B,
 * F, H read in a maker's manual; A, E from memory). What is left between is for the hottest spot, which no resistance shows. Of a
 * scrapped motor nothing above A is known.
 */
public enum ThermalClass {
    /** 105 °C. */
    A(105, 60, 5),
    /** 120 °C. */
    E(120, 75, 5),
    /** 130 °C. */
    B(130, 80, 10),
    /** 155 °C. */
    F(155, 105, 15),
    /** 180 °C. */
    H(180, 125, 20);

    /** Ambient temperature that the rises are for, °C. */
    public static final double AMBIENT = 40;

    private final double limit;
    private final double rise;
    private final double generatorAllowance;

    ThermalClass(double limit, double rise, double generatorAllowance) {
        this.limit = limit;
        this.rise = rise;
        this.generatorAllowance = generatorAllowance;
    }

    /** {@return highest temperature of the winding, °C} */
    public double limit() {
        return limit;
    }

    /** {@return rise of the mean temperature, by resistance, that is allowed at 40 °C, K} */
    public double temperatureRise() {
        return rise;
    }

    /** {@return hottest spot less mean temperature by resistance, K: the limit less 40 °C less the rise; A 5, E 5, B 10, F 10, H 15} */
    public double hotSpotAllowance() {
        return limit - AMBIENT - rise;
    }

    /** {@return the same by older generator practice, K: A 5, B 10, F 15, H 20 (read); E 5 from memory} A second convention. */
    public double generatorAllowance() {
        return generatorAllowance;
    }
}
