package org.leat.pack.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Words in reports have keys by which programs know them. */
class WordsTest {

    @Test
    void a_key_is_the_kind_of_word_and_its_name() {
        assertThat(VoltageCause.DUMP_LOST.key()).isEqualTo("cause.dump-lost");
        assertThat(PartWord.REGULATOR.key()).isEqualTo("part.regulator");
    }
}
