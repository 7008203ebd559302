package org.leat.pack.kit;

import java.util.Locale;
import org.leat.check.Arg;
import org.leat.design.Cable;

/** How runs are named in texts. */
public final class Runs {

    private Runs() {}

    /** {@return where a run leads, in the file's own words: {@code rectifier to battery}} */
    public static Arg arg(String name, Cable cable) {
        return Arg.of(name, word(cable.from()) + " to " + word(cable.to()));
    }

    private static String word(Enum<?> place) {
        return place.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
