package org.leat.design;

/** Thermal class of a winding, IEC 60085. */
@About("Thermal class of a winding, IEC 60085")
public enum InsulationClass {
    /** 105 °C. */
    A,
    /** 120 °C. */
    E,
    /** 130 °C. */
    B,
    /** 155 °C. */
    F,
    /** 180 °C. */
    H
}
