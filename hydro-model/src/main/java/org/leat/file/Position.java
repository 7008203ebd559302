package org.leat.file;

import java.util.Comparator;
import org.apiguardian.api.API;

/**
 * A stretch of a file. Lines and columns count from one, columns in Unicode code points.
 *
 * @param file the file's name as it was given
 * @param line where it begins
 * @param column where it begins
 * @param endLine where it ends
 * @param endColumn one past its last character
 */
@API(status = API.Status.STABLE, since = "0.1")
public record Position(String file, int line, int column, int endLine, int endColumn) implements Comparable<Position> {

    private static final Comparator<Position> ORDER = Comparator.comparing(Position::file)
            .thenComparingInt(Position::line)
            .thenComparingInt(Position::column)
            .thenComparingInt(Position::endLine)
            .thenComparingInt(Position::endColumn);

    /** {@return the first character of a file} */
    public static Position startOf(String file) {
        return new Position(file, 1, 1, 1, 1);
    }

    @Override
    public int compareTo(Position other) {
        return ORDER.compare(this, other);
    }

    /** {@return {@code file:line:column}} */
    @Override
    public String toString() {
        return file + ":" + line + ":" + column;
    }
}
