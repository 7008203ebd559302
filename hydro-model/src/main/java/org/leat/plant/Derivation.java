package org.leat.plant;

import java.util.Map;
import org.leat.design.Design;

/** Turns a design into numbers. */
@SuppressWarnings("DoNotCallSuggester")
final class Derivation {

    private Derivation() {}

    static Plant of(Design design, Map<String, Double> assumedInstead) {
        throw new UnsupportedOperationException(design.name() + assumedInstead);
    }
}
