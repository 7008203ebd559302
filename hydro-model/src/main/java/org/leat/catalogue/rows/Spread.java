package org.leat.catalogue.rows;

import org.apiguardian.api.API;

/**
 * A tabled value and the range in which it is met.
 *
 * @param low least value met, SI
 * @param usual value to reckon with, SI
 * @param high greatest value met, SI
 * @param source who published it, or "common practice"
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Spread(double low, double usual, double high, String source) {

    public Spread {
        if (!(low <= usual && usual <= high)) {
            throw new IllegalArgumentException("out of order: " + low + ", " + usual + ", " + high);
        }
    }

    /** {@return each value times a factor; from the same source} */
    public Spread times(double factor) {
        return new Spread(low * factor, usual * factor, high * factor, source);
    }
}
