package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leat.report.TextWriter.Colours;

class ColourTest {

    @Test
    void a_terminal_gets_colour_and_nothing_else_does() {
        assertThat(Colour.AUTO.colours(Map.of(), true)).isEqualTo(Colours.TERMINAL);
        assertThat(Colour.AUTO.colours(Map.of(), false)).isEqualTo(Colours.NONE);
    }

    @Test
    void no_color_and_a_dumb_terminal_are_honoured() {
        assertThat(Colour.AUTO.colours(Map.of("NO_COLOR", "1"), true)).isEqualTo(Colours.NONE);
        assertThat(Colour.AUTO.colours(Map.of("TERM", "dumb"), true)).isEqualTo(Colours.NONE);
        assertThat(Colour.AUTO.colours(Map.of("NO_COLOR", ""), true)).isEqualTo(Colours.TERMINAL);
    }

    @Test
    void what_is_asked_for_outright_is_done() {
        assertThat(Colour.ALWAYS.colours(Map.of("NO_COLOR", "1"), false)).isEqualTo(Colours.TERMINAL);
        assertThat(Colour.NEVER.colours(Map.of(), true)).isEqualTo(Colours.NONE);
    }
}
