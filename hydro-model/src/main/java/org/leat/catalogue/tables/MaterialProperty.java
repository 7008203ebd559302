package org.leat.catalogue.tables;

import java.util.Locale;
import org.leat.catalogue.rows.PipeMaterial;

/** Properties tabled for {@link PipeMaterial}s at 20 °C. */
public enum MaterialProperty {
    /** Pa, plastics: lower confidence limit of the hoop stress held for 50 years. */
    MINIMUM_REQUIRED_STRENGTH(1e6),
    /** Pa, metals. */
    YIELD_STRENGTH(1e6),
    /** Pa, test of minutes. */
    MODULUS_SHORT(1e6),
    /** Pa, creep at 50 years. */
    MODULUS_LONG(1e6),
    /** surge modulus over {@link #MODULUS_SHORT}. */
    DYNAMIC_FACTOR(1),
    /** ratio. */
    POISSON_RATIO(1),
    /** 1/K. */
    THERMAL_EXPANSION(1e-6),
    /** m, equivalent sand roughness of new pipe. */
    ROUGHNESS_NEW(1e-3),
    /** m, equivalent sand roughness with joints, slime or rust. */
    ROUGHNESS_AGED(1e-3),
    /** greatest total pressure over the rating, surge at every stop. */
    SURGE_RECURRING(1),
    /** greatest total pressure over the rating, surge once in a while. */
    SURGE_OCCASIONAL(1);

    private final double toSi;

    MaterialProperty(double toSi) {
        this.toSi = toSi;
    }

    double toSi() {
        return toSi;
    }

    String column() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
