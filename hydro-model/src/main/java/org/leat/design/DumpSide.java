package org.leat.design;

/** Which side of the battery's fuse a dump load hangs on. */
@About("Which side of the battery's fuse a dump load hangs on")
public enum DumpSide {
    /** fed by the bridge even when the battery is lost. */
    BRIDGE,
    /** at the battery's poles. */
    BATTERY
}
