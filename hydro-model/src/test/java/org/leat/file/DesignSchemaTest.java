package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.design.Design;

class DesignSchemaTest {

    private static final Path FILE = Path.of("..", "docs", "design-file.schema.json");
    private static final Schema SCHEMA = schema();

    private static Schema schema() {
        try {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(new ObjectMapper().readTree(DesignSchema.json()));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<Error> errors(String yaml) {
        // an independent validator, fed the JSON that the sound YAML means
        return SCHEMA.validate(JsonOf.yaml(yaml), InputFormat.JSON);
    }

    @Test
    void the_schema_in_the_docs_is_the_one_made_from_the_records() throws IOException {
        if (Boolean.getBoolean("leat.write-docs")) {
            Files.writeString(FILE, DesignSchema.json());
        }
        assertThat(Files.readString(FILE)).isEqualTo(DesignSchema.json());
    }

    @Test
    void the_schema_is_itself_valid() throws IOException {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(DesignSchema.json(), InputFormat.JSON)).isEmpty();
    }

    @Test
    void the_sound_file_is_valid() {
        assertThat(errors(SampleFiles.alderBeck())).isEmpty();
    }

    @Provide
    Arbitrary<Design> any() {
        return AnyDesign.any();
    }

    @Property(tries = 60, shrinking = ShrinkingMode.OFF)
    void whatever_can_be_written_is_valid(@ForAll("any") Design design) {
        assertThat(SCHEMA.validate(DesignWriter.json(design), InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rated-fittings: 10 bar | rated-fittings: 10 m",
                "rated-fittings: 10 bar | rated-fittings: 10",
                "length: 84 m | length: -84 m",
                "length: 84 m | length: 84 m ± 1 m",
                "length: 84 m | long: 84 m",
                "kind: turgo | kind: turbo",
                "kind: volts-at-speed | kind: volts",
                "kind: volts-at-speed | knd: volts-at-speed",
                "pole-pairs: 15 | pole-pairs: 15.5",
                "pole-pairs: 15 | pole-pairs: 0",
                "sdr: 17 | sdr: 2",
                "below-valve: true | below-valve: 'yes'",
                "open: [ 10 mm ] | open: []",
                "capacity: 200 Ah | notes: x",
                "format: 1 | format: 2",
                "gross-head: 16.5 m ± 0.3 m | gross-head: 16.5 V",
                "gross-head: 16.5 m ± 0.3 m | gross-head: { kind: tube }",
                "area: 10 mm² | area: AWG",
            })
    void a_broken_file_is_refused_by_the_schema_and_by_the_reader(String sound, String broken) {
        assertThat(SampleFiles.alderBeck()).contains(sound);
        String text = SampleFiles.alderBeck().replace(sound, broken);
        assertThat(errors(text)).isNotEmpty();
        assertThat(DesignReader.read(text, "f").problems()).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "area: 10 mm² | area: AWG 7",
                "area: 10 mm² | area: 10 mm2",
                "kind: turgo | kind: Turgo",
                "efficiency: 0.9 | efficiency: 90 %",
                "gross-head: 16.5 m ± 0.3 m | gross-head: 16.5 m +/- 0.3 m",
                "gross-head: 16.5 m ± 0.3 m | gross-head: { kind: gauge, pressure: 1.6 bar ± 0.1 bar }",
                "resistance-between-leads: 0.42 Ω | resistance-between-leads: 420 mohm",
            })
    void another_spelling_is_accepted_by_the_schema_and_by_the_reader(String sound, String other) {
        assertThat(SampleFiles.alderBeck()).contains(sound);
        String text = SampleFiles.alderBeck().replace(sound, other);
        assertThat(errors(text)).isEmpty();
        assertThat(DesignReader.read(text, "f").problems()).isEmpty();
    }

    @Test
    void a_mapping_that_takes_a_part_need_not_state_the_fields() {
        String text = SampleFiles.alderBeck().replace("  chemistry: lithium-iron-phosphate\n", "  part: bank\n");
        assertThat(errors(text)).isEmpty();
    }
}
