package org.leat.hydraulics;

import java.util.List;

/**
 * The blows of one run of {@link GasCavities} on one grid.
 *
 * @param reaches of the grid
 * @param waveSpeedChange largest relative adjustment of a wave speed that the grid needed
 * @param parted time at which the column first parted at the nozzles, s; NaN where it did not
 * @param rejoined time at which that first cavity was closed again, s; NaN where it was not
 * @param blows in order, the first included
 * @param doneGrowing whether the later half of the blows brought nothing greater
 */
record GridBlows(
        int reaches, double waveSpeedChange, double parted, double rejoined, List<Blow> blows, boolean doneGrowing) {

    GridBlows {
        blows = List.copyOf(blows);
    }

    /**
     * One blow.
     *
     * @param atNozzles highest pressure head there, m
     * @param rise highest head anywhere above the level at rest, m; not below 0
     * @param sections highest pressure head in each section, m
     */
    @SuppressWarnings("ArrayRecordComponent") // made and read in this package only, never compared
    record Blow(double atNozzles, double rise, double[] sections) {}

    /** {@return highest pressure head, m, of the blows from one on up to another, not included} Minus infinity if there is none. */
    double highest(int section, int from, int to) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int k = from; k < Math.min(to, blows.size()); k++) {
            highest = Math.max(highest, blows.get(k).sections()[section]);
        }
        return highest;
    }
}
