package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.leat.quantity.Si;

class DesignReaderTest {

    @Test
    void a_sound_file_becomes_a_design_without_problems() {
        Reading reading = DesignReader.read(SampleFiles.alderBeck(), "alder-beck.yaml");
        assertThat(reading.problems()).extracting(ProblemText::line).isEmpty();
        assertThat(Si.of(reading.design().penstock().sections().get(1).length()))
                .isEqualTo(84);
    }
}
