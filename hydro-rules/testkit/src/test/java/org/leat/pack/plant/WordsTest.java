package org.leat.pack.plant;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.leat.plant.solved.EnergyAccount.Stage;

/** Words in reports have keys by which programs know them. */
class WordsTest {

    @Test
    void a_key_is_the_kind_of_word_and_its_name() {
        assertThat(IntervalWord.UNWORN.key()).isEqualTo("interval.unworn");
        assertThat(LossStage.of(Stage.BATTERY).key()).isEqualTo("stage.battery");
    }
}
