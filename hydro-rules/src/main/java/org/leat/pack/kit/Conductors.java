package org.leat.pack.kit;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.quantity.Area;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.design.Design;
import org.leat.plant.numbers.CableNumbers;
import org.leat.quantity.Si;

/** Other conductors for a run. */
public final class Conductors {

    /** What {@link #thicker} says. */
    public static final String THICKER = "Conductors of {area:mm²}.";

    private Conductors() {}

    /** {@return as {@link #thicker(Design, String)}, at whose area or run a rule failed} */
    public static Stream<Change> thicker(Judgement j, Outcome.Fail failure) {
        return thicker(j.design(), failure.path());
    }

    /** {@return larger standard cross-sections, IEC 60228, smallest first; told with {@code area}} */
    public static Stream<Change> thicker(Design design, CableNumbers run) {
        return thicker(design, run.path() + "/conductor/area");
    }

    /**
     * {@return larger standard cross-sections, IEC 60228, smallest first; told with {@code area}}
     *
     * @param path of the conductor's area
     */
    public static Stream<Change> thicker(Design design, String path) {
        double now = Si.of(Runs.at(design, path).conductor().area());
        return DoubleStream.of(0.5, 0.75, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0, 70.0, 95.0)
                .filter(area -> area * 1e-6 > now * 1.001)
                .mapToObj(area -> FieldChanges.told(path, "area", area, "mm²", Area.class));
    }
}
