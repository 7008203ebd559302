package org.leat.design;

/** Where a voltage was measured. */
@About("Where a voltage was measured")
public enum VoltageBetween {
    /** between two of the three leads. */
    LEADS,
    /** between a lead and the star point. */
    LEAD_AND_STAR_POINT,
    /** direct voltage behind a bridge, nothing connected. */
    BRIDGE_OUTPUT
}
