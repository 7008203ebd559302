package org.leat.plant.derive;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.leat.design.ElementPath;
import org.leat.design.Section;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/**
 * Elevations of the points between sections above the nozzle axis. Where none is stated the top is at the intake's water
 * level and the lower end at the nozzle axis; between stated points the pipe is taken to fall evenly along its length.
 */
final class SectionElevations {

    private SectionElevations() {}

    /** {@return one more elevation than there are sections, m} */
    static double[] of(List<Section> sections, double grossHead, Assume assume) {
        int n = sections.size();
        double[] elevation = new double[n + 1];
        boolean[] known = new boolean[n + 1];
        for (int i = 0; i <= n; i++) {
            Quantity<Length> stated = stated(sections, i);
            if (stated != null) {
                elevation[i] = Si.of(stated);
                known[i] = true;
            }
        }
        if (!known[0]) {
            elevation[0] = grossHead;
            known[0] = true;
        }
        if (!known[n]) {
            elevation[n] = 0;
            known[n] = true;
        }
        int from = 0;
        for (int i = 1; i <= n; i++) {
            if (known[i]) {
                even(sections, elevation, from, i, grossHead, assume);
                from = i;
            }
        }
        return elevation;
    }

    private static void even(
            List<Section> sections, double[] elevation, int from, int to, double grossHead, Assume assume) {
        double whole = 0;
        for (int i = from; i < to; i++) {
            whole += Si.of(sections.get(i).length());
        }
        double start = elevation[from];
        double fall = elevation[to] - start;
        double along = 0;
        for (int i = from + 1; i < to; i++) {
            Section above = sections.get(i - 1);
            along += Si.of(above.length());
            elevation[i] = assume.sound(
                    ElementPath.item("/penstock/sections", sections, i - 1) + "/to-elevation",
                    QuantityKind.LENGTH,
                    start + fall * along / whole,
                    0,
                    Math.max(grossHead, start + fall * along / whole),
                    "assumed/even-fall");
        }
    }

    private static @Nullable Quantity<Length> stated(List<Section> sections, int point) {
        Quantity<Length> end = point == 0 ? null : sections.get(point - 1).toElevation();
        return end != null || point == sections.size()
                ? end
                : sections.get(point).fromElevation();
    }
}
