package org.leat.readings;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.plant.Plant;

/** The demo plants, as they stand in the examples. */
final class DemoPlants {

    static final List<String> NAMES = List.of("rowan-ghyll", "ash-gill", "first-try", "tannery-yard", "orchard-sluice");

    private DemoPlants() {}

    static Plant of(String name) {
        Design design =
                Objects.requireNonNull(DesignReader.read(Path.of("..", "hydro-examples", "designs", name + ".yaml"))
                        .design());
        return Plant.of(design);
    }
}
