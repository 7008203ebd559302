package org.leat.readings;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.plant.Plant;

/** The demo plants, as they stand in the examples, and one with a tracking regulator. */
final class DemoPlants {

    static final List<String> NAMES =
            List.of("rowan-ghyll", "ash-gill", "first-try", "tannery-yard", "orchard-sluice", "elder-sike");

    /** With a tracking regulator; the rules' examples stand on it. */
    private static final Path TRACKING = Path.of(
            "..", "hydro-rules", "src", "main", "resources", "org", "leat", "pack", "bases", "sound-tracking.yaml");

    private DemoPlants() {}

    static Plant of(String name) {
        Path file = name.equals("elder-sike") ? TRACKING : Path.of("..", "hydro-examples", "designs", name + ".yaml");
        Design design = Objects.requireNonNull(DesignReader.read(file).design());
        return Plant.of(design);
    }
}
