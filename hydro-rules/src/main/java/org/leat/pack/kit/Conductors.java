package org.leat.pack.kit;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.quantity.Area;
import org.leat.check.Change;
import org.leat.design.Design;
import org.leat.plant.numbers.CableNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Other conductors for a run. */
public final class Conductors {

    private Conductors() {}

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
                .mapToObj(area -> Change.of(path, Si.quantity(area, "mm²", Area.class))
                        .with("area", area * 1e-6, QuantityKind.AREA));
    }
}
