package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.leat.arbitraries.Designs;
import org.leat.design.Design;

class DesignWriterTest {

    @Provide
    Arbitrary<Design> plausible() {
        return Designs.plausible();
    }

    @Provide
    Arbitrary<Design> any() {
        return AnyDesign.any();
    }

    @Property(tries = 100, shrinking = ShrinkingMode.OFF)
    void what_is_written_as_yaml_reads_back_equal(@ForAll("plausible") Design design) {
        assertReadsBack(DesignWriter.yaml(design), design);
    }

    @Property(tries = 120, shrinking = ShrinkingMode.OFF)
    void every_field_and_kind_and_awkward_text_reads_back_equal(@ForAll("any") Design design) {
        assertReadsBack(DesignWriter.yaml(design), design);
    }

    @Property(tries = 120, shrinking = ShrinkingMode.OFF)
    void what_is_written_as_json_reads_back_equal(@ForAll("any") Design design) {
        assertReadsBack(DesignWriter.json(design), design);
    }

    @Property(tries = 100, shrinking = ShrinkingMode.OFF)
    void writing_is_settled_after_one_reading(@ForAll("any") Design design) {
        String once = DesignWriter.yaml(design);
        assertThat(DesignWriter.yaml(DesignReader.read(once, "x").design())).isEqualTo(once);
    }

    @Test
    void short_mappings_and_lists_stand_on_one_line() {
        Design design = DesignReader.read(SampleFiles.alderBeck(), "x").design();
        String yaml = DesignWriter.yaml(design);
        assertThat(yaml)
                .contains("  water-temperature: { lowest: 1 °C, highest: 16 °C }\n")
                .contains("  air-temperature: { lowest: -8 °C, highest: 33 °C }\n")
                .contains("  gross-head: 16.5 m ± 0.3 m\n")
                .contains("  available: [6 mm, 8 mm, 10 mm, 12 mm]\n")
                .contains("blocked-share: 0.4");
    }

    private static void assertReadsBack(String text, Design design) {
        Reading reading = DesignReader.read(text, "written");
        assertThat(reading.problems()).extracting(ProblemText::line).isEmpty();
        assertThat(reading.design()).isEqualTo(design);
    }
}
