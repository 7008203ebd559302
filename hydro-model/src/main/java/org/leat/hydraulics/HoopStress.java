package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Hoop stress of plastic pipe on its mean diameter: {@code σ = p (SDR − 1)/2}, Pa, with gauge pressure p [Pa] and outside
 * diameter over wall SDR. Source: ISO 161-1.
 */
public final class HoopStress {

    private HoopStress() {}

    /** {@return hoop stress, Pa} */
    public static double stress(double pressure, double sdr) {
        return Physical.finite("pressure", pressure) * (Physical.within("sdr", sdr, 2, 1000) - 1) / 2;
    }
}
