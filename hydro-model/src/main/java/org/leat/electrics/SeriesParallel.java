package org.leat.electrics;

import org.leat.law.Physical;

/**
 * A bank of n like cells in series and m like strings in parallel: voltage n V, capacity m C, energy n m V C. The strings must be
 * of one age, length of lead and state; three to four lead strings at most, each with its own fuse [common practice].
 *
 * @param series cells from pole to pole
 * @param parallel strings
 */
public record SeriesParallel(int series, int parallel) {

    public SeriesParallel {
        Physical.positive("cells in series", series);
        Physical.positive("strings", parallel);
    }

    /** {@return voltage of the bank from one cell's, V} */
    public double voltage(double cellVoltage) {
        return series * cellVoltage;
    }

    /** {@return capacity of the bank from one cell's, A·s} */
    public double capacity(double cellCapacity) {
        return parallel * Physical.positive("cell capacity", cellCapacity);
    }

    /** {@return energy of the bank, J, at a cell's nominal voltage, V, and capacity, A·s} */
    public double energy(double cellVoltage, double cellCapacity) {
        return voltage(cellVoltage) * capacity(cellCapacity);
    }

    /** {@return cells in series whose nominal voltage comes nearest to a bus, V} */
    public static int cellsFor(double busVoltage, double nominalCellVoltage) {
        Physical.positive("bus voltage", busVoltage);
        Physical.positive("nominal cell voltage", nominalCellVoltage);
        return (int) Math.max(1, Math.round(busVoltage / nominalCellVoltage));
    }
}
