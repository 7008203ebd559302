/**
 * A year of a plant, hour by hour: what the stream brings, which nozzle set that fills, what the battery does, what is
 * missing. Uses the solved plant; no law of water or electricity is written here again.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.season;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
