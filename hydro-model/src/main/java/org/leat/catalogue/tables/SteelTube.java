package org.leat.catalogue.tables;

import java.util.List;
import java.util.Optional;

/**
 * A steel tube for threading and welding. Source: EN 10255, tables 1 and 2, from memory.
 *
 * @param nominalDiameter DN
 * @param series {@code medium} or {@code heavy}
 * @param outsideDiameter m
 * @param wall nominal, m
 */
public record SteelTube(int nominalDiameter, String series, double outsideDiameter, double wall) {

    /** Share by which a wall may be thinner than nominal. */
    public static final double WALL_TOLERANCE = 0.1;

    private static final LazyTable<SteelTube> ALL = LazyTable.of(
            "steel-tubes",
            SteelTube.class,
            row -> new SteelTube(row.nominalDiameter, row.series, row.outsideDiameter / 1000, row.wall / 1000));

    /** {@return every tube tabled, by diameter, the medium series before the heavy} */
    public static List<SteelTube> all() {
        return ALL.rows();
    }

    /** {@return the tube of a series whose outside diameter, m, is within 0.1 mm of the one given} */
    public static Optional<SteelTube> find(String series, double outsideDiameter) {
        return ALL.rows().stream()
                .filter(tube -> tube.series.equals(series) && Math.abs(tube.outsideDiameter - outsideDiameter) < 1e-4)
                .findFirst();
    }

    /** {@return wall for strength: nominal less its tolerance, m} */
    public double minimumWall() {
        return wall * (1 - WALL_TOLERANCE);
    }

    /** {@return bore between nominal walls, m} */
    public double bore() {
        return outsideDiameter - 2 * wall;
    }
}
