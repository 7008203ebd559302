package org.leat.design;

import org.apiguardian.api.API;

/** Insulation of a cable's cores. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Insulation of a cable's cores")
public enum CableInsulation {
    /** 70 °C at the conductor. */
    PVC,
    /** 90 °C at the conductor. */
    XLPE
}
