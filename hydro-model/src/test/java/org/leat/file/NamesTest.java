package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NamesTest {

    private static final List<String> KNOWN =
            List.of("penstock/fittings-rating", "penstock/friction-share", "penstock/velocity", "length", "wet-length");

    @ParameterizedTest
    @CsvSource({
        "penstock/friction, penstock/friction-share",
        "penstock/fricton-share, penstock/friction-share",
        "penstock/velocty, penstock/velocity",
        "len, length",
        "lenght, length",
        "Length, length",
        "le, ''",
        "battery/strings, ''"
    })
    void the_nearest_name_is_the_one_begun_or_the_one_mistyped(String given, String nearest) {
        assertThat(Names.nearest(given, KNOWN)).isEqualTo(nearest);
    }
}
