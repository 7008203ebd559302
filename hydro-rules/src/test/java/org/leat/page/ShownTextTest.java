package org.leat.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ShownTextTest {

    @Test
    void watts_lost_look_other_than_watts_won() {
        assertThat(ShownText.gainClass("\u2212697 W")).isEqualTo("gain lost");
        assertThat(ShownText.gainClass("+6 W")).isEqualTo("gain");
        assertThat(ShownText.gainClass("\u00b10 W")).isEqualTo("gain");
    }
}
