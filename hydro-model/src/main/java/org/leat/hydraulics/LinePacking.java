package org.leat.hydraulics;

/**
 * Highest head after an instant stop in a pipe with friction: {@code H = Hr + a V0/g}, m, above the <em>tank</em> level Hr,
 * not above the working head: while the wave travels up, the friction head it releases packs the line and comes on top.
 *
 * <p>Source: Wylie and Streeter, ch. 2 (line packing); on the safe side of {@link Characteristics} by less than the friction
 * head squared over the surge.
 */
public final class LinePacking {

    private LinePacking() {}

    /**
     * {@return highest head at the stopped end, m}
     *
     * @param tankHead level of the water at the intake above the nozzle, m
     * @param waveSpeed m/s
     * @param velocity stopped, m/s
     */
    public static double highestHead(double tankHead, double waveSpeed, double velocity) {
        return tankHead + Joukowsky.head(waveSpeed, velocity);
    }

    /** {@return lowest head by the mirror image, m: the tank level less the surge} Low plants fall below the atmosphere. */
    public static double lowestHead(double tankHead, double waveSpeed, double velocity) {
        return tankHead - Joukowsky.head(waveSpeed, velocity);
    }
}
