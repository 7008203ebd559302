package org.leat.readings;

import org.apiguardian.api.API;

/**
 * One value that was read.
 *
 * @param channel what was read, and where
 * @param path of the value in the file of readings, as {@code /sets[0]/speed}
 * @param value SI
 * @param standard uncertainty of the instrument, one sigma, SI
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Observation(Channel channel, String path, double value, double standard) {
    public Observation {
        if (!Double.isFinite(value) || !(standard > 0)) {
            throw new IllegalArgumentException(path + ": " + value + ", " + standard);
        }
    }
}
