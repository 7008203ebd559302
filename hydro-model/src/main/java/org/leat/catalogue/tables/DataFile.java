package org.leat.catalogue.tables;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.leat.catalogue.CatalogueException;

/** Reads a table of this package: lines beginning with # name its source, the first other line its columns. */
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
            try (MappingIterator<T> rows =
                    Csv.MAPPER.readerFor(row).with(Csv.COLUMNS).readValues(in)) {
                return List.copyOf(rows.readAll());
            }
        } catch (IOException e) {
            throw new CatalogueException(name + ".csv", e);
        }
    }

    /** Built when the first table is read, not when a class of this package loads. */
    private static final class Csv {
        static final CsvMapper MAPPER = CsvMapper.builder()
                .enable(CsvParser.Feature.TRIM_SPACES, CsvParser.Feature.FAIL_ON_MISSING_COLUMNS)
                .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .build();
        static final CsvSchema COLUMNS = CsvSchema.emptySchema().withHeader().withComments();

        private Csv() {}
    }
}
