package org.leat.pack.kit;

import static org.leat.quantity.Quantities.mm;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.leat.catalogue.Catalogue;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.rows.PipeStandard;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.design.Pipe;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Other sizes of the pipe that a section is made of, as edits of the design. */
public final class PipeSizes {

    /** What {@link #larger} and {@link #smaller} say. */
    public static final String OTHER = "Section {section} in {diameter:mm} outside diameter.";

    private PipeSizes() {}

    /** {@return the path of a section} */
    public static String path(Design design, int section) {
        return ElementPath.item("/penstock/sections", design.penstock().sections(), section);
    }

    /** {@return the longest section} */
    public static int longest(Judgement j) {
        List<SectionNumbers> sections = j.plant().numbers().penstock().sections();
        return IntStream.range(0, sections.size())
                .boxed()
                .max(Comparator.comparingDouble(i -> sections.get(i).length()))
                .orElse(0);
    }

    /** {@return candidates of the sizes above the one a section has, smallest first; none for what no standard tables} */
    public static Stream<Change> larger(Judgement j, int section) {
        OptionalDouble now = outsideDiameter(j.design(), section);
        return now.isEmpty()
                ? Stream.empty()
                : sizes(j, section).stream()
                        .filter(diameter -> diameter > now.getAsDouble() * 1.001)
                        .map(diameter -> to(j, section, diameter));
    }

    /** {@return candidates of the sizes below the one a section has, largest first; none for what no standard tables} */
    public static Stream<Change> smaller(Judgement j, int section) {
        return smallerDiameters(j, section).map(diameter -> to(j, section, diameter));
    }

    /** {@return the outside diameters below that of a section, m, largest first; none for what no standard tables} */
    public static Stream<Double> smallerDiameters(Judgement j, int section) {
        OptionalDouble now = outsideDiameter(j.design(), section);
        return now.isEmpty()
                ? Stream.empty()
                : sizes(j, section).stream()
                        .filter(diameter -> diameter < now.getAsDouble() * 0.999)
                        .sorted(Comparator.reverseOrder());
    }

    private static OptionalDouble outsideDiameter(Design design, int section) {
        Pipe pipe = design.penstock().sections().get(section).pipe();
        if (pipe instanceof Pipe.Polyethylene p) {
            return OptionalDouble.of(Si.of(p.outsideDiameter()));
        }
        return pipe instanceof Pipe.PvcU p ? OptionalDouble.of(Si.of(p.outsideDiameter())) : OptionalDouble.empty();
    }

    private static List<Double> sizes(Judgement j, int section) {
        return onOffer(
                j.plant().catalogue(),
                j.design().penstock().sections().get(section).pipe());
    }

    /** {@return a section of another outside diameter, m; told with {@code section} and {@code diameter}} */
    public static Change to(Judgement j, int section, double diameter) {
        Design design = j.design();
        double millimetres = Math.rint(diameter * 1e4) / 10;
        return Change.of(path(design, section) + "/pipe/outside-diameter", mm(millimetres))
                .with("section", design.penstock().sections().get(section).name())
                .with("diameter", diameter, QuantityKind.LENGTH);
    }

    /** Only a pipe whose wall follows from its series: a measured wall belongs to the one pipe that was measured. */
    private static List<Double> onOffer(Catalogue catalogue, Pipe pipe) {
        if (pipe instanceof Pipe.Polyethylene p && p.wall() == null) {
            return catalogue.pipeSizes(standard(p.standard(), PipeStandard.ISO_4427), PipeMaterial.of(p.material()));
        }
        if (pipe instanceof Pipe.PvcU p && p.wall() == null) {
            return catalogue.pipeSizes(standard(p.standard(), PipeStandard.ISO_1452), PipeMaterial.PVC_U);
        }
        return List.of();
    }

    private static PipeStandard standard(@org.jspecify.annotations.Nullable String mark, PipeStandard usual) {
        return Optional.ofNullable(mark).flatMap(PipeStandard::find).orElse(usual);
    }
}
