package org.leat.catalogue.rows;

import org.apiguardian.api.API;
import org.leat.design.PolyethyleneGrade;

/** Materials of pipe wall that the catalogue knows. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public enum PipeMaterial {
    PE80("PE80", "polyethylene"),
    PE100("PE100", "polyethylene"),
    PVC_U("PVC-U", "pvc-u"),
    STEEL("steel", "steel"),
    GALVANIZED_STEEL("galvanized-steel", "steel"),
    HOSE("hose", "pvc-u");

    private final String label;
    private final String family;

    PipeMaterial(String label, String family) {
        this.label = label;
        this.family = family;
    }

    /** {@return the material of a grade of polyethylene} */
    public static PipeMaterial of(PolyethyleneGrade grade) {
        return switch (grade) {
            case PE80 -> PE80;
            case PE100 -> PE100;
        };
    }

    /** {@return the name as marked on pipe and used in the tables} */
    public String label() {
        return label;
    }

    /** {@return the family whose stiffness falls with temperature in the same way} */
    public String family() {
        return family;
    }
}
