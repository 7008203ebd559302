package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leat.cli.Said.leat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BenchTest {

    private static final String EXAMPLES = "../../hydro-examples/";
    private static final String HUT = EXAMPLES + "designs/rowan-ghyll.yaml";

    @Test
    void a_bench_goes_into_the_design_with_day_and_source_and_comments_stay(@TempDir Path folder) throws IOException {
        Path design = folder.resolve("hut.yaml");
        String before = Files.readString(Path.of(HUT)).replace("  pole-pairs: 8\n", "");
        Files.writeString(design, before);
        String bench = EXAMPLES + "readings/rowan-ghyll-bench.yaml";
        Said shown = leat("bench", bench, "--design", design.toString());
        assertThat(shown.code()).as(shown.err()).isZero();
        assertThat(shown.out())
                .contains("nothing wrong that these readings show")
                .contains("Not excluded where four wires were not used: the ohmmeter's own leads were counted.")
                .contains("Nothing is written yet");
        assertThat(Files.readString(design)).isEqualTo(before);
        assertThat(leat("bench", bench, "--design", design.toString(), "--write")
                        .code())
                .isZero();
        String after = Files.readString(design);
        assertThat(after)
                .contains("voltage: 21.43 V ± ")
                .contains("# measured by open leads on the bench, 2030-08-03\n")
                .contains("# measured by ohms between leads on the bench, 2030-08-03\n")
                .doesNotContain("four wires")
                .contains("  inductance-between-leads: 0.40")
                .contains("\n  pole-pairs: 8  # measured by frequency and speed on the bench, 2030-08-03\n")
                .contains(" W, second-speed: 100 rpm }  # measured by coasting on the bench, 2030-08-03\n")
                .startsWith(before.substring(0, before.indexOf("name:")));
        assertThat(leat("check", design.toString()).code()).isZero();
        // what was written once is read as it was
        Said again = leat("bench", bench, "--design", design.toString(), "--write");
        assertThat(Files.readString(design)).as(again.out()).isEqualTo(after);
    }

    @Test
    void readings_that_were_wrong_go_into_no_design_and_the_place_is_told(@TempDir Path folder) throws IOException {
        Path design = folder.resolve("hut.yaml");
        Files.copy(Path.of(HUT), design);
        Said said = leat(
                "bench",
                EXAMPLES + "readings/rowan-ghyll-bench-first-try.yaml",
                "--design",
                design.toString(),
                "--write");
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out()).contains("the ohmmeter's own leads were counted: 0.11");
        assertThat(said.err()).contains("hut.yaml:87:3: /alternator stays").contains("read again first");
        assertThat(Files.readString(design)).isEqualTo(Files.readString(Path.of(HUT)));
    }

    @Test
    void a_table_of_a_scrap_motor_names_the_weak_phase_in_text_and_json() throws IOException {
        String bench = EXAMPLES + "readings/hub-motor-bench.csv";
        // what is told by readings is never sure
        assertThat(leat("bench", bench).out())
                .contains("a phase weak, that of lead B")
                .contains("over 99.9 %")
                .doesNotContain("  100 %");
        JsonNode root = new ObjectMapper()
                .readTree(leat("bench", "--format", "json", bench).out());
        assertThat(root.at("/faults/0/fault").asText()).isEqualTo("phase-weak");
        assertThat(root.at("/faults/0/lead").asText()).isEqualTo("B");
        assertThat(root.at("/faults/0/size").asDouble()).isBetween(0.11, 0.17);
        assertThat(root.at("/constants/1/value").asInt()).isEqualTo(23);
    }

    @Test
    void the_empty_sheet_can_be_read_once_something_is_filled_in(@TempDir Path folder) throws IOException {
        Said empty = leat("bench", "--empty-readings");
        assertThat(empty.code()).isZero();
        Path file = folder.resolve("bench.yaml");
        Files.writeString(file, empty.out());
        assertThat(leat("bench", file.toString()).code()).isEqualTo(3);
        Files.writeString(
                file,
                empty.out()
                        .replace(": 0 Ω", ": 0.4 Ω")
                        .replace("speed: 0 rpm, frequency: 0 Hz", "speed: 300 rpm, frequency: 75 Hz")
                        .replace(": 0 V", ": 10 V"));
        Said read = leat("bench", file.toString());
        assertThat(read.err()).isEmpty();
        assertThat(read.out())
                .contains("nothing wrong that these readings show")
                .contains("pole pairs");
    }

    /** Constants of a coasting rotor are no judgement, and a design that says star is not told to say star. */
    @Test
    void what_was_not_judged_is_no_all_clear(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("bench.yaml");
        Files.writeString(file, """
                format: 1
                inertia: 0.012 kg·m²
                readings:
                  - { time: 0 s, speed: 1198 rpm }
                  - { time: 2 s, speed: 919 rpm }
                  - { time: 4 s, speed: 643 rpm }
                """);
        Said coasting = leat("bench", file.toString());
        assertThat(coasting.code()).isEqualTo(4);
        assertThat(coasting.out()).contains("torque of iron and friction").contains("Not known");
        assertThat(coasting.out()).doesNotContain("nothing wrong");
        JsonNode json = new ObjectMapper()
                .readTree(leat("bench", "--format", "json", file.toString()).out());
        assertThat(json.at("/judged").asBoolean(true)).isFalse();
        assertThat(json.at("/faults").isEmpty()).isTrue();
        Files.writeString(
                file, "format: 1\nreadings: [ { speed: 500 rpm, volts-ab: 0 V, volts-bc: 0 V, volts-ca: 0 V } ]\n");
        Said dead = leat("bench", file.toString());
        assertThat(dead.code()).isEqualTo(1);
        assertThat(dead.out()).contains("Not known").doesNotContain("nothing wrong");
        assertThat(dead.err()).contains("bench.yaml:2:");
    }

    @Test
    void what_is_stated_of_the_other_connection_leaves_the_word_that_is_right(@TempDir Path folder) throws IOException {
        // the hut's motor is stated as star with 21.3 V at 1000 rpm and 0.125 Ω: √3 and 3 times as much here
        Path file = folder.resolve("bench.yaml");
        Files.writeString(file, """
                format: 1
                temperature: 20 °C
                readings:
                  - { resistance-ab: 0.375 Ω, resistance-bc: 0.376 Ω, resistance-ca: 0.374 Ω }
                  - { speed: 500 rpm, frequency: 66.7 Hz, volts-ab: 18.45 V, volts-bc: 18.43 V, volts-ca: 18.46 V }
                  - { speed: 1000 rpm, frequency: 133.4 Hz, volts-ab: 36.9 V, volts-bc: 36.85 V, volts-ca: 36.91 V }
                """);
        Said said = leat("bench", file.toString(), "--design", HUT);
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out())
                .contains("connected in star, and what is stated are the numbers of delta")
                .doesNotContain("connection: star")
                .contains("+ resistance-between-leads: 0.37");
    }

    /** One slip in a file that was right, and where it is told. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "speed: 397 rpm | speed: -397 rpm | :12:",
                "speed: 397 rpm | speed: 397 V | :12:",
                "speed: 397 rpm | speed: 0 rpm | :12:",
                "speed: 397 rpm, frequency | frequency | ",
                "volts-ab: 8.55 V | volts-ab: -8.55 V | :12:",
                "volts-ab: 8.55 V | volts-ab: 8.55 A | :12:",
                "volts-ab: 8.55 V | volts-ab: 85.5 V | :12:",
                "volts-ab: 8.55 V | volts-ab: 8.55 kV | :12:",
                "volts-ab: 8.55 V | volt-ab: 8.55 V | :12:",
                "speed: 803 rpm | speed: 8030 rpm | :13:",
                "speed: 803 rpm | speed: 80300 rpm | :13:",
                "frequency: 106.6 Hz | frequency: 106.6 kHz | :13:",
                "resistance-ab: 0.1244 Ω | resistance-ab: -0.1244 Ω | :11:",
                "resistance-ab: 0.1244 Ω | resistance-ab: 1.244 Ω | :11:",
                "resistance-ab: 0.1244 Ω | resistance-ab: 0.1244 Ω, speed: 100 rpm | :11:",
                "amps-a: 18.6 A | amps-a: 18.6 V | :15:",
                "time: 2 s | time: 0 s | :18:",
                "time: 2 s, speed: 919 rpm | time: 2 s, speed: 1919 rpm | :18:",
                "time: 2 s, speed: 919 rpm | time: 2 s | :18:",
                "time: 2 s, speed: 919 rpm | time: 2 s, speed: 919 rpm, volts-ab: 3 V | :18:",
                "pole-pairs: 8 | pole-pairs: 0 | :7:",
                "pole-pairs: 8 | pole-pairs: 7.5 | :7:",
                "inertia: 0.012 kg·m² ± 0.001 kg·m² | inertia: 0 kg·m² | :9:",
                "temperature: 18 °C | temperature: 180 °C | :8:",
                "temperature: 18 °C | temperature: 291 K | ",
            })
    void a_slip_is_told_with_its_place(String right, String wrong, String place, @TempDir Path folder)
            throws IOException {
        Path file = folder.resolve("bench.yaml");
        String text = Files.readString(Path.of(EXAMPLES + "readings/rowan-ghyll-bench.yaml"));
        assertThat(text).contains(right);
        Files.writeString(file, text.replaceFirst(java.util.regex.Pattern.quote(right), wrong));
        Said said = leat("bench", file.toString());
        if (place == null) {
            assertThat(said.code()).as(said.err()).isZero();
        } else {
            assertThat(said.err()).contains("bench.yaml" + place);
            assertThat(said.code()).isIn(1, 3);
        }
    }

    @Test
    void the_design_may_stand_before_the_readings_as_for_the_other_commands_at_the_water() {
        String bench = EXAMPLES + "readings/rowan-ghyll-bench.yaml";
        Said said = leat("bench", HUT, bench);
        assertThat(said.code()).as(said.err()).isZero();
        assertThat(said).isEqualTo(leat("bench", bench, "--design", HUT));
        assertThat(leat("bench", HUT, bench, "third.yaml").err()).contains("more than a design and a file of readings");
        assertThat(leat("bench", HUT, bench, "--design", HUT).err()).contains("the design is said twice");
    }

    @ParameterizedTest
    @CsvSource({
        "'0.1244 Ω, resistance-bc: 0.1245 Ω, resistance-ca: 0.1248 Ω', '124.4 Ω, resistance-bc: 124.5 Ω, resistance-ca: 124.8 Ω', resistance between leads is some thousand times what goes with the others: milli?",
        "'amps-a: 18.6 A, amps-b: 18.8 A, amps-c: 18.7 A', 'amps-a: 0.186 A, amps-b: 0.188 A, amps-c: 0.187 A', ''",
    })
    void a_slip_in_the_unit_is_told_where_no_fault_explains_it(
            String right, String typed, String told, @TempDir Path folder) throws IOException {
        String text = Files.readString(Path.of(EXAMPLES + "readings/rowan-ghyll-bench.yaml"));
        assertThat(text).contains(right);
        Path file = folder.resolve("bench.yaml");
        Files.writeString(file, text.replace(right, typed));
        Said said = leat("bench", HUT, file.toString());
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out())
                .contains("No single fault explains these readings")
                .contains(told);
    }
}
