package org.leat.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.leat.file.DesignReader;
import org.leat.file.PartsFinder;
import org.leat.file.Reading;

/**
 * Where a design is read from.
 *
 * @param name as reports show it
 * @param file the file; null for standard input
 */
record DesignSource(String name, @Nullable Path file) {

    /** Standard input, as it is called unless the call says otherwise. */
    static final String STANDARD_INPUT = "standard-input";

    /** More than the reader takes, so that it can say so. */
    private static final int MOST = (1 << 20) + 1;

    /** {@return what it says} */
    Reading read() {
        if (file != null) {
            return DesignReader.read(file);
        }
        try {
            byte[] content = System.in.readNBytes(MOST);
            return DesignReader.read(content, name, parts());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Parts files lie beside the file that standard input stands for. */
    private PartsFinder parts() {
        if (name.equals(STANDARD_INPUT)) {
            return PartsFinder.none();
        }
        Path folder = Path.of(name).getParent();
        return PartsFinder.within(folder == null ? Path.of("") : folder);
    }
}
