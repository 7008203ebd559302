package org.leat.catalogue.tables;

import org.leat.design.CableInsulation;
import org.leat.design.ConductorMaterial;
import org.leat.design.LayingMethod;
import org.leat.law.Physical;

/**
 * What the capacity of a cable hangs on besides its area.
 *
 * @param material of the conductor
 * @param method reference method of IEC 60364-5-52
 * @param insulation of the cores
 * @param loadedConductors two (direct current, single phase) or three (three phases)
 * @param ambient temperature of the air or the soil around it, K
 * @param groupedCircuits loaded circuits side by side, itself among them
 * @param soilResistivity thermal, of the soil around a buried cable, K m/W; of no account in air
 */
public record CableLaying(
        ConductorMaterial material,
        ReferenceMethod method,
        CableInsulation insulation,
        int loadedConductors,
        double ambient,
        int groupedCircuits,
        double soilResistivity) {

    /** What the tables of buried cables suppose, K m/W: dry soil, on the safe side in most. */
    public static final double TABLED_SOIL = 2.5;

    public CableLaying {
        Physical.within("loaded conductors", loadedConductors, 2, 3);
        Physical.positive("ambient", ambient);
        Physical.within("grouped circuits", groupedCircuits, 1, Integer.MAX_VALUE);
        Physical.positive("soil resistivity", soilResistivity);
    }

    /** A laying in soil as the tables suppose it, if it is buried. */
    public CableLaying(
            ConductorMaterial material,
            LayingMethod method,
            CableInsulation insulation,
            int loadedConductors,
            double ambient,
            int groupedCircuits) {
        this(material, ReferenceMethod.of(method), insulation, loadedConductors, ambient, groupedCircuits, TABLED_SOIL);
    }
}
