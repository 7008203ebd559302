package org.leat.catalogue.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.catalogue.rows.CatalogueException;

/** Every table of the catalogue says where it comes from, and a broken one is noticed. */
class DataFileTest {

    static Stream<Path> tables() throws IOException, URISyntaxException {
        Path folder =
                Path.of(DataFile.class.getResource("pipe-series.csv").toURI()).getParent();
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".csv")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void a_table_begins_with_what_it_holds_and_names_its_source(Path table) throws IOException {
        List<String> lines = Files.readAllLines(table, StandardCharsets.UTF_8);
        List<String> header =
                lines.stream().takeWhile(line -> line.startsWith("#")).toList();
        assertThat(header).isNotEmpty();
        assertThat(header).anyMatch(line -> line.matches("# Sources?:( .{10,})?"));
        String columns = lines.get(header.size());
        assertThat(columns).matches("[A-Za-z0-9]+(,[A-Za-z0-9]+)*");
        assertThat(lines.size()).isGreaterThan(header.size() + 2);
    }

    private record Sdr(double sdr) {}

    private record Wrong(double sdr, int tenths, double missing) {}

    @Test
    void a_missing_table_and_wrong_columns_are_faults_of_the_build() {
        assertThatThrownBy(() -> DataFile.rows("no-such-table", Sdr.class)).isInstanceOf(CatalogueException.class);
        assertThatThrownBy(() -> DataFile.rows("pipe-series", Sdr.class)).isInstanceOf(CatalogueException.class);
        assertThatThrownBy(() -> DataFile.rows("pipe-series", Wrong.class)).isInstanceOf(CatalogueException.class);
    }
}
