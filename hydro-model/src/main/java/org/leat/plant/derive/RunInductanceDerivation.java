package org.leat.plant.derive;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.tables.CableInductance;
import org.leat.design.Cable;
import org.leat.design.CoreArrangement;
import org.leat.design.Installation;
import org.leat.design.LayingMethod;
import org.leat.design.Place;
import org.leat.electrics.RunInductance;
import org.leat.law.Answer;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/**
 * Inductance that the run from alternator to bridge adds to each phase. How its conductors lie is taken from the design, else from its
 * laying method, else assumed, and told where that could move the machine's inductance by more than a hundredth.
 */
final class RunInductanceDerivation {

    /** Spacing of open wires where none is stated, m: as on short poles. */
    private static final double USUAL_SPACING = 0.3;

    private static final double WIDE_SPACING = 1;

    /** Insulation and sheath over a thin conductor, m. */
    private static final double COVER = 1.6e-3;

    private static final int USUAL_WIRES = 7;
    private static final double NOTICED = 0.01;

    private RunInductanceDerivation() {}

    /** {@return H a phase} Nil where nothing is said to run there; runs side by side share the current. */
    static double of(List<Cable> cables, double winding, Assume assume) {
        double inductance = 0;
        for (Place end : List.of(Place.RECTIFIER, Place.REGULATOR, Place.BATTERY)) {
            double inverse = 0;
            for (int i = 0; i < cables.size(); i++) {
                Cable cable = cables.get(i);
                if (joins(cable, end)) {
                    inverse += 1 / of(cable, "/cables[" + i + "]/installation", winding, assume);
                }
            }
            inductance += inverse == 0 ? 0 : 1 / inverse;
        }
        return inductance;
    }

    private static boolean joins(Cable cable, Place end) {
        return (cable.from() == Place.ALTERNATOR && cable.to() == end)
                || (cable.to() == Place.ALTERNATOR && cable.from() == end);
    }

    private static double of(Cable cable, String path, double winding, Assume assume) {
        double area = Si.of(cable.conductor().area());
        double length = Si.of(cable.length());
        Installation laid = cable.installation();
        CoreArrangement cores = arrangement(laid);
        double spacing = Si.of(laid == null ? null : laid.wireSpacing(), 0);
        boolean open = cores == null ? Boolean.TRUE.equals(cable.overhead()) : cores == CoreArrangement.OPEN_WIRE;
        double usual = length * (open ? openWire(area, spacing > 0 ? spacing : USUAL_SPACING) : inCable(cores, area));
        double low = cores != null ? usual : length * inCable(CoreArrangement.MULTICORE, area);
        double high = open
                ? length * openWire(area, spacing > 0 ? spacing : WIDE_SPACING)
                : length * inCable(cores == null ? CoreArrangement.SINGLE_CORES : cores, area);
        return high - low <= NOTICED * winding
                ? usual
                : assume.sound(
                        path + (cores == null ? "/cores" : "/wire-spacing"),
                        QuantityKind.INDUCTANCE,
                        usual,
                        low,
                        high,
                        "assumed/run-inductance");
    }

    /** As stated, else what the laying method implies; null where neither tells. */
    private static @Nullable CoreArrangement arrangement(@Nullable Installation laid) {
        if (laid == null || laid.cores() != null) {
            return laid == null ? null : laid.cores();
        }
        LayingMethod method = laid.method();
        return method == null || method == LayingMethod.C
                ? null
                : method == LayingMethod.F ? CoreArrangement.SINGLE_CORES : CoreArrangement.MULTICORE;
    }

    /** Of one conductor, H/m; where the maker's table ends, by the formula for neighbours that touch. */
    private static double inCable(@Nullable CoreArrangement cores, double area) {
        boolean single = cores == CoreArrangement.SINGLE_CORES;
        CableInductance.Lay lay = single ? CableInductance.Lay.SINGLE_CORES : CableInductance.Lay.MULTICORE;
        return CableInductance.perConductor(lay, area) instanceof Answer.Value tabled
                ? tabled.value()
                : (single ? 1 : RunInductance.MULTICORE)
                        * openWire(area, (single ? RunInductance.FLAT : 1) * (diameter(area) + COVER));
    }

    private static double openWire(double area, double spacing) {
        double diameter = diameter(area);
        return RunInductance.perConductor(RunInductance.internal(USUAL_WIRES), Math.max(spacing, diameter), diameter)
                .orThrow();
    }

    /** Of a stranded conductor, over seven wires that leave gaps, m. */
    private static double diameter(double area) {
        return 1.13 * Math.sqrt(area * 4 / Math.PI);
    }
}
