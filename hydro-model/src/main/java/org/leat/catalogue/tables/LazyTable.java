package org.leat.catalogue.tables;

import java.util.List;
import java.util.function.UnaryOperator;
import org.leat.catalogue.rows.CatalogueException;
import org.leat.lazy.Once;

/**
 * One table of this package, read when it is first asked for: a class that holds one loads without it, and a table that
 * is missing takes down nothing but what needs it.
 */
final class LazyTable<T> {

    private final Once<List<T>> rows;

    private LazyTable(Once<List<T>> rows) {
        this.rows = rows;
    }

    /** {@return the table of {@code name.csv}, not yet read} */
    static <T> LazyTable<T> of(String name, Class<T> row) {
        return new LazyTable<>(new Once<>(() -> DataFile.rows(name, row)));
    }

    /** {@return the table of {@code name.csv}, not yet read, each row as tabled turned into one in SI} */
    static <T> LazyTable<T> of(String name, Class<T> row, UnaryOperator<T> inSi) {
        return new LazyTable<>(
                new Once<>(() -> DataFile.rows(name, row).stream().map(inSi).toList()));
    }

    /**
     * {@return its rows, in order, unmodifiable}
     *
     * @throws CatalogueException if the table cannot be read
     */
    List<T> rows() {
        return rows.get();
    }
}
