package org.leat.readings;

import org.apiguardian.api.API;

/** What the alternator works on while something is read. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public enum LoadState {
    /** Every nozzle shut, the pipe full. */
    SHUT,
    /** Nothing connected to the alternator's leads: the wheel runs away. */
    OPEN,
    /** The dump load alone on the bus, the battery disconnected. */
    DUMP,
    /** The bus with its battery. */
    BUS
}
