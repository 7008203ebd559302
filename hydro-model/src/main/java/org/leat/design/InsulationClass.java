package org.leat.design;

import org.apiguardian.api.API;

/** Thermal class of a winding, IEC 60085. */
@API(status = API.Status.STABLE, since = "0.1")
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
