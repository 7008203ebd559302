package org.leat.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.leat.catalogue.PipeCatalogue;
import org.leat.catalogue.PipeStandard;
import org.leat.check.Edit;
import org.leat.design.Design;
import org.leat.design.Pipe;
import org.leat.design.Section;
import org.leat.file.ElementPath;
import org.leat.quantity.Si;

/** Other sizes of the pipe that a section is made of, as edits of the design. */
final class PipeSizes {

    private PipeSizes() {}

    /**
     * Another outside diameter of the same pipe series.
     *
     * @param outsideDiameter m
     * @param edits that put it into the design
     */
    record Size(double outsideDiameter, List<Edit> edits) {}

    /** {@return the path of a section} */
    static String path(Design design, int section) {
        return ElementPath.item("/penstock/sections", design.penstock().sections(), section);
    }

    /** {@return the sizes above the one a section has, smallest first; none for what no standard tables} */
    static List<Size> larger(Design design, int section) {
        return sizes(design, section).stream()
                .filter(size -> size.outsideDiameter() > outsideDiameter(design, section) * 1.001)
                .toList();
    }

    /** {@return the sizes below the one a section has, largest first; none for what no standard tables} */
    static List<Size> smaller(Design design, int section) {
        return sizes(design, section).stream()
                .filter(size -> size.outsideDiameter() < outsideDiameter(design, section) * 0.999)
                .sorted(Comparator.comparingDouble(Size::outsideDiameter).reversed())
                .toList();
    }

    private static double outsideDiameter(Design design, int section) {
        Pipe pipe = design.penstock().sections().get(section).pipe();
        if (pipe instanceof Pipe.Polyethylene p) {
            return Si.of(p.outsideDiameter());
        }
        return pipe instanceof Pipe.PvcU p ? Si.of(p.outsideDiameter()) : Double.POSITIVE_INFINITY;
    }

    private static List<Size> sizes(Design design, int section) {
        Section of = design.penstock().sections().get(section);
        String field = path(design, section) + "/pipe/outside-diameter";
        List<Size> sizes = new ArrayList<>();
        for (double diameter : tabled(of.pipe())) {
            Quantity<Length> millimetres = Si.quantity(Math.rint(diameter * 1e4) / 10, "mm", Length.class);
            sizes.add(new Size(diameter, List.of(new Edit(field, millimetres))));
        }
        return sizes;
    }

    /** Only a pipe whose wall follows from its series: a measured wall belongs to the one pipe that was measured. */
    private static List<Double> tabled(Pipe pipe) {
        if (pipe instanceof Pipe.Polyethylene p && p.wall() == null) {
            return PipeCatalogue.sizes(standard(p.standard(), PipeStandard.ISO_4427));
        }
        if (pipe instanceof Pipe.PvcU p && p.wall() == null) {
            return PipeCatalogue.sizes(standard(p.standard(), PipeStandard.ISO_1452));
        }
        return List.of();
    }

    private static PipeStandard standard(@org.jspecify.annotations.Nullable String mark, PipeStandard usual) {
        return Optional.ofNullable(mark).flatMap(PipeStandard::find).orElse(usual);
    }
}
