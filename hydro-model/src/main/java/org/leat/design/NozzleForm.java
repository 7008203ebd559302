package org.leat.design;

import org.apiguardian.api.API;

/** How a nozzle is shaped inside. */
@API(status = API.Status.STABLE, since = "0.1")
@About("How a nozzle is shaped inside")
public enum NozzleForm {
    /** converging and smooth, the jet as wide as the bore. */
    SMOOTH,
    /** hole in a flat plate. */
    SHARP_HOLE,
    /** short straight tube. */
    SHORT_TUBE
}
