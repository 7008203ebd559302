package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Charging a vehicle or tool battery of n cells in series through its own charger: energy into the pack E = n V C ΔSoC, drawn at
 * the socket E/η, mean power over the time it may take. A full pack stands at n times its cells' highest voltage: 42.0 V for ten,
 * 58.8 V for fourteen cells of lithium-ion; a bus that can rise above it must never be wired to the pack: fire.
 *
 * <p>Source: energy balance. Charger efficiency 0.85 to 0.92 [common practice].
 */
public final class PackCharge {

    private PackCharge() {}

    /**
     * {@return energy into the pack, J}
     *
     * @param cells in series
     * @param nominalCellVoltage V
     * @param capacity of the pack, A·s
     * @param share of the capacity to be filled
     */
    public static double energy(int cells, double nominalCellVoltage, double capacity, double share) {
        Physical.positive("cells", cells);
        Physical.positive("nominal cell voltage", nominalCellVoltage);
        Physical.positive("capacity", capacity);
        return cells * nominalCellVoltage * capacity * Physical.within("share", share, 0, 1);
    }

    /** {@return energy drawn at the socket, J, for an energy into the pack, J} */
    public static double atSocket(double energy, double chargerEfficiency) {
        Physical.notNegative("energy", energy);
        Physical.positive("efficiency", Physical.within("efficiency", chargerEfficiency, 0, 1));
        return energy / chargerEfficiency;
    }

    /** {@return mean power, W, of an energy, J, drawn within a time, s} */
    public static double meanPower(double energy, double time) {
        return Physical.notNegative("energy", energy) / Physical.positive("time", time);
    }

    /** {@return voltage of the full pack, V, from its cells' highest} */
    public static double fullVoltage(int cells, double highestCellVoltage) {
        Physical.positive("cells", cells);
        return cells * Physical.positive("highest cell voltage", highestCellVoltage);
    }
}
