package org.leat.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ShownTest {

    @Test
    void watts_lost_look_other_than_watts_won() {
        assertThat(Shown.gainClass("\u2212697 W")).isEqualTo("gain lost");
        assertThat(Shown.gainClass("+6 W")).isEqualTo("gain");
        assertThat(Shown.gainClass("\u00b10 W")).isEqualTo("gain");
    }
}
