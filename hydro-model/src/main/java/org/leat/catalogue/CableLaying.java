package org.leat.catalogue;

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
 * @param ambient temperature of the air around it, K
 * @param groupedCircuits loaded circuits side by side, itself among them
 */
public record CableLaying(
        ConductorMaterial material,
        LayingMethod method,
        CableInsulation insulation,
        int loadedConductors,
        double ambient,
        int groupedCircuits) {

    public CableLaying {
        Physical.within("loaded conductors", loadedConductors, 2, 3);
        Physical.positive("ambient", ambient);
        Physical.within("grouped circuits", groupedCircuits, 1, Integer.MAX_VALUE);
    }
}
