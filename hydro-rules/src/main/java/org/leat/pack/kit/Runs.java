package org.leat.pack.kit;

import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.quantity.Area;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.design.Cable;
import org.leat.design.Design;
import org.leat.plant.numbers.CableNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** How runs are named in texts. */
public final class Runs {

    private Runs() {}

    /** {@return where a run leads, in the file's own words: {@code rectifier to battery}} */
    public static Arg arg(String name, Cable cable) {
        return Arg.of(name, name(cable));
    }

    /** {@return the name of a run as an argument} */
    public static Arg arg(String name, Design design, CableNumbers run) {
        return arg(name, design.cables().get(run.index()));
    }

    /** {@return where a run leads} */
    public static String name(Cable cable) {
        return word(cable.from()) + " to " + word(cable.to());
    }

    /** {@return the run at a path or above it} */
    public static Cable at(Design design, String path) {
        return design.cables().get(Integer.parseInt(path.substring(path.indexOf('[') + 1, path.indexOf(']'))));
    }

    /**
     * {@return larger standard cross-sections, IEC 60228, smallest first; told with {@code area}}
     *
     * @param path of the conductor's area
     */
    public static Stream<Change> thicker(Design design, String path) {
        double now = Si.of(at(design, path).conductor().area());
        return DoubleStream.of(0.5, 0.75, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0, 70.0, 95.0)
                .filter(area -> area * 1e-6 > now * 1.001)
                .mapToObj(area -> Change.of(path, Si.quantity(area, "mm²", Area.class))
                        .with("area", area * 1e-6, QuantityKind.AREA));
    }

    private static String word(Enum<?> place) {
        return place.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
