package org.leat.catalogue.tables;

import java.util.List;

/**
 * A hose as commonly sold, for a first estimate: what is marked on the hose always goes before. Common practice, no
 * source.
 *
 * @param kind how it is built
 * @param bore m
 * @param wall m
 * @param workingPressure Pa at 20 °C
 * @param burstRatio burst over working pressure
 * @param suctionProof whether a helix keeps it open under suction
 * @param highestTemperature K
 * @param roughness equivalent sand roughness, m
 */
public record CommonHose(
        String kind,
        double bore,
        double wall,
        double workingPressure,
        double burstRatio,
        boolean suctionProof,
        double highestTemperature,
        double roughness) {

    private static final LazyTable<CommonHose> ALL = LazyTable.of(
            "hoses",
            CommonHose.class,
            row -> new CommonHose(
                    row.kind,
                    row.bore / 1000,
                    row.wall / 1000,
                    row.workingPressure * 1e5,
                    row.burstRatio,
                    row.suctionProof,
                    row.highestTemperature + 273.15,
                    row.roughness / 1000));

    /** {@return every hose tabled, by kind and bore} */
    public static List<CommonHose> all() {
        return ALL.rows();
    }
}
