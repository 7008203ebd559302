package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainTextTest {

    @ParameterizedTest
    @ValueSource(strings = {"::error::x", "##[group]x", "##vso[task.setvariable variable=x]y", "##teamcity[x]"})
    void what_a_service_obeys_is_broken_up_within_a_word_too(String command) {
        String told = PlainText.of("a" + command);
        assertThat(told).doesNotContain("::").doesNotContainPattern("##\\w*\\[").contains("a\\u00");
    }

    @Test
    void a_word_longer_than_a_line_is_never_broken_before_a_command() {
        for (int before = 0; before < 60; before++) {
            String told = Wrapping.text("  " + PlainText.of("x".repeat(before) + "::error::owned"), 40);
            assertThat(told.lines().map(String::stripLeading)).noneMatch(line -> line.startsWith("::"));
        }
    }

    @Test
    void a_bracket_that_follows_makes_no_command_of_a_name_that_ends_as_one_begins() {
        assertThat(PlainText.of("/loads[a##vso") + "[task]").doesNotContain("##vso[");
        assertThat(PlainText.of("# 3 ## not a command")).isEqualTo("# 3 ## not a command");
        assertThat(PlainText.of("12:30")).isEqualTo("12:30");
    }
}
