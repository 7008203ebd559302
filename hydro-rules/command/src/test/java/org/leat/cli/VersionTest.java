package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VersionTest {

    /** What is not set stands in the file as nothing or as the build's own word for it. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "https://docs.example.org/leat/, https://docs.example.org/leat/",
                "https://docs.example.org/leat, https://docs.example.org/leat/",
                "'', none",
                "${leat.pages}, none",
                "none, none",
                "http://docs.example.org/leat/, none",
            })
    void an_address_ends_with_a_slash_and_what_is_none_is_none(String written, String address) {
        assertThat(Version.address(written)).isEqualTo(address);
    }
}
