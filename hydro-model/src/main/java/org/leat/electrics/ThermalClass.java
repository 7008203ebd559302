package org.leat.electrics;

/** Thermal class of a winding's insulation, IEC 60085 (from memory). Of a scrapped motor nothing above A is known. */
public enum ThermalClass {
    /** 105 °C. */
    A(105),
    /** 120 °C. */
    E(120),
    /** 130 °C. */
    B(130),
    /** 155 °C. */
    F(155),
    /** 180 °C. */
    H(180);

    private final double limit;

    ThermalClass(double limit) {
        this.limit = limit;
    }

    /** {@return highest temperature of the winding, °C} */
    public double limit() {
        return limit;
    }
}
