package org.leat.pack;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.design.Design;
import org.leat.design.Fitting;
import org.leat.design.Section;
import org.leat.quantity.Si;

/** Valves of the penstock. */
final class Valves {

    private Valves() {}

    /** {@return path of the closing time of the fastest valve of the penstock; null where no time is stated} */
    static @Nullable String fastest(Design design) {
        String path = null;
        double least = Double.POSITIVE_INFINITY;
        for (Section section : design.penstock().sections()) {
            List<Fitting> fittings = section.fittings();
            for (int i = 0; i < fittings.size(); i++) {
                var time = fittings.get(i).closingTime();
                if (time != null && Si.of(time) < least) {
                    least = Si.of(time);
                    path = "/penstock/sections[" + section.name() + "]/fittings[" + i + "]/closing-time";
                }
            }
        }
        return path;
    }
}
