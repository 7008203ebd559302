package org.leat.design;

/** Insulation of a cable's cores. */
@About("Insulation of a cable's cores")
public enum CableInsulation {
    /** 70 °C at the conductor. */
    PVC,
    /** 90 °C at the conductor. */
    XLPE
}
