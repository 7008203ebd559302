package org.leat.pack;

import org.jspecify.annotations.Nullable;
import org.leat.catalogue.AmpacityCatalogue;
import org.leat.catalogue.CableLaying;
import org.leat.design.Cable;
import org.leat.design.ConductorMaterial;
import org.leat.design.Installation;
import org.leat.law.Answer;
import org.leat.quantity.Si;

/**
 * What a run carries for ever as it is laid.
 *
 * @param missing field that is not stated; null where nothing is missing
 * @param answer A, all parallel cores together; of no use where something is missing
 */
record CableCapacity(@Nullable String missing, Answer answer) {

    /** {@return the capacity} Nothing of the laying is taken for granted. */
    static CableCapacity of(Cable cable, String path, CableLoad load) {
        Installation laid = cable.installation();
        if (laid == null || laid.method() == null) {
            return missing(path, "method");
        }
        if (laid.insulation() == null) {
            return missing(path, "insulation");
        }
        if (laid.ambient() == null) {
            return missing(path, "ambient");
        }
        if (laid.groupedCircuits() == null) {
            return missing(path, "grouped-circuits");
        }
        ConductorMaterial material = cable.conductor().material();
        Answer one = AmpacityCatalogue.capacity(
                Si.of(cable.conductor().area()),
                new CableLaying(
                        material == null ? ConductorMaterial.COPPER : material,
                        laid.method(),
                        laid.insulation(),
                        load.threePhase() ? 3 : 2,
                        Si.of(laid.ambient()),
                        laid.groupedCircuits()));
        int parallel =
                cable.conductor().parallel() == null ? 1 : cable.conductor().parallel();
        return new CableCapacity(null, one instanceof Answer.Value value ? Answer.of(value.value() * parallel) : one);
    }

    private static CableCapacity missing(String path, String field) {
        return new CableCapacity(path + "/installation/" + field, Answer.of(0));
    }
}
