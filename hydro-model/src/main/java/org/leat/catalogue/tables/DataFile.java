package org.leat.catalogue.tables;

import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.leat.catalogue.rows.CatalogueException;

/**
 * Reads a table of this package: lines beginning with # name its source, the first other line its columns. The library reads the
 * text and {@link TableRow} makes the rows: a mapper of any object to any record costs a short run more than all the tables.
 */
final class DataFile {

    private DataFile() {}

    /**
     * {@return the rows of {@code name.csv}, in order, unmodifiable}
     *
     * @throws CatalogueException if it is not there, or broken
     */
    static <T> List<T> rows(String name, Class<T> row) {
        try (InputStream in = DataFile.class.getResourceAsStream(name + ".csv")) {
            if (in == null) {
                throw new CatalogueException(name + ".csv", "it is not there");
            }
            try (CsvParser csv = Csv.FACTORY.createParser(in)) {
                csv.setSchema(Csv.COLUMNS);
                TableRow<T> shape = TableRow.of(row);
                List<T> rows = new ArrayList<>();
                while (csv.nextToken() == JsonToken.START_OBJECT) {
                    rows.add(shape.read(csv));
                }
                return List.copyOf(rows);
            }
        } catch (IOException | IllegalArgumentException e) {
            throw new CatalogueException(name + ".csv", e);
        }
    }

    /** Built when the first table is read, not when a class of this package loads. */
    private static final class Csv {
        static final CsvFactory FACTORY = CsvFactory.builder()
                .enable(CsvParser.Feature.TRIM_SPACES)
                .enable(CsvParser.Feature.FAIL_ON_MISSING_COLUMNS)
                .build();
        static final CsvSchema COLUMNS = CsvSchema.emptySchema().withHeader().withComments();

        private Csv() {}
    }
}
