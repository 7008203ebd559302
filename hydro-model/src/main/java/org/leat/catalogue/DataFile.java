package org.leat.catalogue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** Reads a table of this package: lines beginning with # name its source, the first other line its columns. */
final class DataFile {

    private static final CsvMapper CSV = CsvMapper.builder()
            .enable(CsvParser.Feature.TRIM_SPACES, CsvParser.Feature.FAIL_ON_MISSING_COLUMNS)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .build();
    private static final CsvSchema COLUMNS =
            CsvSchema.emptySchema().withHeader().withComments();

    private DataFile() {}

    /** {@return the rows of {@code name.csv}, in order, unmodifiable; a broken table is a fault of the build} */
    static <T> List<T> rows(String name, Class<T> row) {
        try (InputStream in = DataFile.class.getResourceAsStream(name + ".csv")) {
            if (in == null) {
                throw new IllegalStateException("no table " + name);
            }
            try (MappingIterator<T> rows = CSV.readerFor(row).with(COLUMNS).readValues(in)) {
                return List.copyOf(rows.readAll());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }
}
