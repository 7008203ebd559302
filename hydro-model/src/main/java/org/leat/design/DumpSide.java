package org.leat.design;

import org.apiguardian.api.API;

/** Which side of the battery's fuse a dump load hangs on. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Which side of the battery's fuse a dump load hangs on")
public enum DumpSide {
    /** fed by the bridge even when the battery is lost. */
    BRIDGE,
    /** at the battery's poles. */
    BATTERY
}
