package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressTest {

    private static String said(int designs, boolean wanted) {
        StringWriter said = new StringWriter();
        Progress progress = new Progress(new PrintWriter(said), designs, wanted);
        for (int i = 0; i < designs; i++) {
            progress.step();
        }
        progress.end();
        return said.toString();
    }

    @Test
    void each_design_is_told_from_four_on_and_wiped_out_at_the_end() {
        String line = "leat: 4 of 4 designs";
        assertThat(said(4, true))
                .startsWith("\rleat: 1 of 4 designs\rleat: 2 of 4 designs")
                .endsWith("\r" + line + "\r" + " ".repeat(line.length()) + "\r");
        assertThat(said(3, true)).isEmpty();
        assertThat(said(40, false)).isEmpty();
    }
}
