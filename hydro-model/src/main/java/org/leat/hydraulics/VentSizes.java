package org.leat.hydraulics;

import java.util.List;
import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Nominal sizes in which pipe and air valves for a vent are made, taken as bores, m: DN 8, 10, 15, 20, 25, 32, 40, 50, 65, 80, 100,
 * 125, 150. The bore of the piece bought may be less: it goes before.
 *
 * <p>Source: ISO 6708 nominal sizes (from memory).
 */
public final class VentSizes {

    private static final List<Double> SIZES =
            List.of(0.008, 0.010, 0.015, 0.020, 0.025, 0.032, 0.040, 0.050, 0.065, 0.080, 0.100, 0.125, 0.150);

    private VentSizes() {}

    /** {@return all, m, rising} */
    public static List<Double> all() {
        return SIZES;
    }

    /** {@return the least size, m, of at least a bore, m} Outside where none is. */
    public static Answer atLeast(double bore) {
        Physical.notNegative("bore", bore);
        return SIZES.stream()
                .filter(size -> size >= bore)
                .findFirst()
                .map(Answer::of)
                .orElseGet(() -> Answer.outside("ISO 6708 nominal sizes of vents", "bore", bore, 0.008, 0.150, "m"));
    }
}
