package org.leat.cli;

import java.nio.file.Path;
import org.leat.file.Reading;

/** One design file, or standard input. */
final class PlantFile {

    private static final String STANDARD_INPUT = "-";

    private PlantFile() {}

    /** {@return what it says} */
    static Reading read(String name) {
        return name.equals(STANDARD_INPUT)
                ? new DesignSource(DesignSource.STANDARD_INPUT, null).read()
                : new DesignSource(name, Path.of(name)).read();
    }
}
