package org.leat.cli;

import java.nio.file.Path;
import java.util.Locale;
import org.leat.file.Filled;
import org.leat.file.RecordReader;

/** Files of readings: YAML, JSON, or a table by its name's ending. */
final class Tables {

    private Tables() {}

    /** {@return what a file says} The rows of a table go into the list. */
    static <R extends Record> Filled<R> read(Class<R> type, String list, String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return lower.endsWith(".csv") || lower.endsWith(".tsv")
                ? RecordReader.readTable(type, list, Path.of(name), name)
                : RecordReader.read(type, Path.of(name), name);
    }
}
