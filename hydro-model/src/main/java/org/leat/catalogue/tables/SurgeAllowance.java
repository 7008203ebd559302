package org.leat.catalogue.tables;

import org.leat.catalogue.rows.PipeMaterial;

/**
 * Pressure a pipe may see for the moment of a surge, over its rating at the wall's temperature.
 *
 * <p>Source: polyethylene 1.5 recurring and 2.0 occasional (AWWA C901 and C906, from memory): of the United States pressure class, whose
 * design factor is 0.63 of the hydrostatic basis, not of an ISO PN with C = 1.25; no ISO or EN text read gives it, PE100+ Association
 * reports it for C = 1.25; PVC-U 1.6
 * occasional (AWWA C900, from memory), under recurring surge no total above the rating and a pressure range of at most half of it
 * (CP 312-2, read). Steel and hose: none, the surge counts within the rating.
 */
public final class SurgeAllowance {

    private SurgeAllowance() {}

    /** {@return greatest total pressure over the rating where every stop makes the surge} */
    public static double recurring(PipeMaterial material) {
        return MaterialData.usual(material, MaterialProperty.SURGE_RECURRING);
    }

    /** {@return greatest total pressure over the rating where the surge comes once in a while} */
    public static double occasional(PipeMaterial material) {
        return MaterialData.usual(material, MaterialProperty.SURGE_OCCASIONAL);
    }
}
