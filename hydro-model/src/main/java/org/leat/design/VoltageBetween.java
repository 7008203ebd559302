package org.leat.design;

import org.apiguardian.api.API;

/** Where a voltage was measured. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Where a voltage was measured")
public enum VoltageBetween {
    /** between two of the three leads. */
    LEADS,
    /** between a lead and the star point. */
    LEAD_AND_STAR_POINT,
    /** direct voltage behind a bridge, nothing connected. */
    BRIDGE_OUTPUT
}
