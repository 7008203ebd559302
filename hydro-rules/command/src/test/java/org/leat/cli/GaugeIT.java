package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Samples;
import org.leat.file.DesignReader;
import org.leat.plant.Plant;

/** Gauging with the real jar. */
class GaugeIT {

    private static final String BUCKET = "{ kind: bucket, volume: 12 L, times: [4.1 s, 3.9 s, 4.2 s] }";

    @TempDir
    Path folder;

    record Ran(int code, String out, String err) {}

    private Ran gauge(String input, String... arguments) throws Exception {
        List<String> command = new ArrayList<>(RealJar.command(List.of(), "gauge"));
        command.addAll(List.of(arguments));
        Path in = Files.writeString(folder.resolve("in"), input);
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        int code = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectInput(in.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start()
                .waitFor();
        return new Ran(
                code, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
    }

    private static JsonNode json(Ran ran) throws IOException {
        return new ObjectMapper().readTree(ran.out());
    }

    @Test
    void options_file_and_standard_input_give_the_same_answer() throws Exception {
        String text = "format: 1\nflow:\n  - " + BUCKET + "\n";
        Ran options = gauge("", "--bucket", "12 L", "--times", "4.1 s, 3.9 s, 4.2 s");
        Files.writeString(folder.resolve("readings.yaml"), text);
        assertThat(options.code()).isZero();
        assertThat(options.out()).contains("bucket and stopwatch: 2.95 L/s ± 0.275 L/s", "Q = V/t");
        assertThat(gauge("", "readings.yaml")).isEqualTo(options);
        assertThat(gauge(text, "-")).isEqualTo(options);
    }

    @Test
    void a_design_file_with_readings_gives_the_flow_and_the_head_that_its_plant_has() throws Exception {
        String text = Samples.SHORT.replaceFirst(
                "gross-head: .*\n",
                "gross-head: { kind: tube, steps: [11.9 m, 12.2 m], reading: 5 mm }\n  stream: { flow: " + BUCKET
                        + " }\n");
        Files.writeString(folder.resolve("plant.yaml"), text);
        JsonNode said = json(gauge("", "--format", "json", "plant.yaml"));
        Plant plant = Plant.of(DesignReader.read(text, "plant.yaml").design());
        assertThat(said.at("/flow/gaugings/0/value").asDouble())
                .isCloseTo(plant.numbers().site().stream().get(0).flow(), within(1e-9));
        assertThat(said.at("/head/gaugings/0/value").asDouble())
                .isCloseTo(plant.numbers().site().grossHead(), within(1e-9));
    }

    @Test
    void every_method_of_the_options_is_taken() throws Exception {
        Ran ran = gauge(
                "",
                "--float=5 m",
                "--wet-area=0.12 m²",
                "--times=9 s,9.4 s",
                "--surface-factor=0.8",
                "--v-notch=90°",
                "--weir-head=85 mm ± 1 mm",
                "--crest-height=0.5 m",
                "--channel-width=0.9 m",
                "--tube=1.5 m,1.6 m",
                "--gauge=0.3 bar",
                "--gauge-above=10 cm",
                "--leg=20 m@12°",
                "--leg=15 m@9.5°",
                "--angle-reading=0.5°");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("float: ", "V-notch weir: ", "water-filled tube: 3.1 m", "pressure gauge: ", "clinometer")
                .doesNotContain("assumed");
    }

    @Test
    void a_weir_outside_its_standard_is_open_with_the_reason_and_no_success() throws Exception {
        String[] call = {"--weir-width=0.2 m", "--weir-head=22 mm", "--crest-height=0.3 m", "--channel-width=0.9 m"};
        Ran ran = gauge("", call);
        assertThat(ran.code()).isEqualTo(4);
        assertThat(ran.out()).contains("open: ", "head is 0.022 m", "ISO 1438", "from 0.03 m on");
        Ran notch = gauge("", "--v-notch", "90°", "--weir-head", "85 mm");
        assertThat(notch.code()).isEqualTo(4);
        assertThat(notch.out()).contains("open: ");
    }

    @Test
    void a_bad_file_exits_with_3_and_every_problem_has_its_place() throws Exception {
        Ran ran = gauge(
                "format: 1\nflow:\n  - { kind: bucket, volume: 12 bar, times: [4 s] }\nhead:\n  - { kind: tubes }\n",
                "-");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .contains(
                        "standard input:3:29: /flow[0]/volume: found \"12 bar\"", "standard input:5:13: /head[0]/kind");
        assertThat(gauge("", "missing.yaml").code()).isEqualTo(3);
        assertThat(gauge("", "-").code()).isEqualTo(3);
        assertThat(gauge("format: 1\n", "-").err()).contains("readings of flow");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--bucket=12 L | --times: missing",
                "--times=4 s | --times goes with --bucket or --float",
                "--bucket=12 L --times=4,1 s | --times: found \"4\" without a unit",
                "--bucket=12 L --float=5 m --times=4 s | --times goes with --bucket or --float, one in a call",
                "--leg=20 m | --leg: missing; expected an angle",
                "--bucket=0 L --times=4 s | --bucket: found",
                "--bucket=12 L --times=4 s --format=sarif | text or json",
                "--bucket=12 L --times=4 s readings.yaml | not from both",
                "'' | name a file"
            })
    void a_wrong_call_exits_with_2_and_names_the_option(String call, String said) throws Exception {
        Ran ran = gauge("", call.isEmpty() ? new String[0] : call.split(" (?=--|readings)"));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith("leat: ").contains(said);
    }
}
