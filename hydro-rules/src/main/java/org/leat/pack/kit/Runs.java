package org.leat.pack.kit;

import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.design.Cable;
import org.leat.design.Design;
import org.leat.design.Place;
import org.leat.plant.numbers.CableNumbers;

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

    /** {@return the paths of the runs that begin or end at a part} */
    public static Stream<String> joining(Design design, Place place) {
        return IntStream.range(0, design.cables().size())
                .filter(i -> Devices.joins(design.cables().get(i), place))
                .mapToObj(i -> "/cables[" + i + "]");
    }

    private static String word(Enum<?> place) {
        return place.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
