package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.check.Samples;

/** Files, folders, patterns, standard input and several outputs, with the real jar. */
class ManyDesignsIT {

    @TempDir
    Path folder;

    private RealJar leat;

    @BeforeEach
    void jar() {
        leat = new RealJar(folder);
    }

    private void design(String name) throws IOException {
        file(name, Samples.SHORT.replace("name: sample", "name: " + name.replace("/", " ")));
    }

    private void file(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private static List<String> designs(RealJar.Ran ran) throws IOException {
        return new ObjectMapper().readTree(ran.out()).get("designs").findValuesAsText("design");
    }

    @Test
    void folders_patterns_and_files_are_taken_once_and_by_name() throws Exception {
        for (String name : List.of("b.yaml", "a.yaml", "more/c.yaml", "more/deep/d.yml", ".off/e.yaml")) {
            design(name);
        }
        file("motors.yaml", "small:\n  mass: 3 kg\n");
        List<String> all = List.of("a.yaml", "b.yaml", "more c.yaml", "more deep d.yml");
        for (String[] call : new String[][] {
            {"."},
            {"b.yaml", "a.yaml", "more"},
            {"more/deep", "more", "./a.yaml", "b.yaml", folder.resolve("a.yaml").toString()},
            {"[ab].yaml", "**/*.y{a,}ml"},
            {"?.yaml", "more/c*", "more/deep/"}
        }) {
            List<String> arguments = new java.util.ArrayList<>(List.of("check", "--format", "json"));
            arguments.addAll(List.of(call));
            RealJar.Ran ran = leat.run(arguments.toArray(String[]::new));
            if (String.join(" ", call).contains("**")) {
                assertThat(ran.code()).isEqualTo(3); // as in a shell, the pattern names the parts file too
                assertThat(designs(ran)).contains("a.yaml", "more deep d.yml");
            } else {
                assertThat(designs(ran)).as(String.join(" ", call)).isEqualTo(all);
            }
        }
        assertThat(leat.run("check", ".").err())
                .isEqualTo("leat: left aside, for they hold no part of a plant: motors.yaml\n");
    }

    @Test
    void where_nothing_is_found_the_call_is_wrong_and_nothing_is_checked() throws Exception {
        design("a.yaml");
        Files.createDirectory(folder.resolve("empty"));
        file("parts/motors.yaml", "small:\n  mass: 3 kg\n");
        for (String[] call : new String[][] {
            {"a.yaml", "empty", "no design in the folder empty"},
            {"a.yaml", "x*.yaml", "no file matches x*.yaml"},
            {"a.yaml", "none/*.yaml", "no file matches none/*.yaml"},
            {
                "a.yaml",
                "parts",
                "no design in the folder parts; what is there holds no part of a plant: parts/motors.yaml"
            },
            {"a.yaml", "--input-name=b.yaml", "--input-name goes with -"},
            {"a.yaml", "--also=sarif=a.yaml", "a.yaml is a design that is checked"},
            {"a.yaml", "--also=sarif=none/a.sarif", "none/a.sarif cannot be written"},
            {"a.yaml", "--also=sarif", "is not FORMAT=FILE"}
        }) {
            RealJar.Ran ran = leat.run("check", call[0], call[1]);
            assertThat(ran.code()).as(call[1]).isEqualTo(2);
            assertThat(ran.out()).isEmpty();
            assertThat(ran.err()).startsWith("leat: ").contains(call[2]).doesNotContain("\tat ");
        }
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void standard_input_is_read_under_the_name_it_is_given() throws Exception {
        RealJar.Ran ran = leat.run(List.of(), Samples.SHORT, "check", "-");
        assertThat(ran.out()).startsWith("standard-input: sample");
        assertThat(ran.code()).isIn(0, 1);
        file("plants/pipes.yaml", "long-one:\n  gross-head: 24 m\n");
        String text =
                Samples.SHORT.replace("site:\n  gross-head: 24 m", "parts: [pipes.yaml]\nsite:\n  part: long-one");
        assertThat(text).contains("part: long-one");
        RealJar.Ran named = leat.run(List.of(), text, "check", "--input-name", "plants/new.yaml", "-", "-");
        assertThat(named.out()).startsWith("plants/new.yaml: sample").contains("1 file checked");
        assertThat(leat.run(List.of(), text, "check", "-").code()).isEqualTo(3);
        assertThat(leat.run(List.of(), "", "check", "-").code()).isEqualTo(3);
    }

    @Test
    void several_outputs_of_one_run_are_those_of_several_runs() throws Exception {
        design("a.yaml");
        Files.writeString(folder.resolve("r.json"), "old");
        Files.setPosixFilePermissions(folder.resolve("r.json"), PosixFilePermissions.fromString("rw-rw----"));
        RealJar.Ran ran = leat.run(
                "check", "a.yaml", "--also", "json=r.json", "--also", "junit=r.xml", "--also", "markdown=r.md");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).isEqualTo(leat.run("check", "a.yaml").out());
        for (String one : List.of("json=r.json", "junit=r.xml", "markdown=r.md")) {
            String format = one.substring(0, one.indexOf('='));
            assertThat(Files.readString(folder.resolve(one.substring(format.length() + 1))))
                    .isEqualTo(leat.run("check", "a.yaml", "--format", format).out());
        }
        assertThat(Files.getPosixFilePermissions(folder.resolve("r.json")))
                .isEqualTo(PosixFilePermissions.fromString("rw-rw----"));
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void three_hundred_designs_need_no_more_memory_than_fifty_in_every_format() throws Exception {
        for (int i = 0; i < 300; i++) {
            // a fall of its own, so that nothing is solved for two of them
            String fall = String.format(Locale.ROOT, "gross-head: 24.%04d m", i);
            file(
                    String.format(Locale.ROOT, "%s/plant-%04d.yaml", i < 50 ? "few" : "many", i),
                    Samples.SHORT.replace("name: sample", "name: " + i).replace("gross-head: 24 m", fall));
        }
        file("many/broken.yaml", "penstock: [\n");
        Files.createDirectory(folder.resolve("out"));
        int one = leat.run("check", "few/plant-0000.yaml").code();
        for (String few : new String[] {"few", "."}) {
            RealJar.Ran ran = leat.run(
                    List.of("-Xmx24m"),
                    "",
                    "check",
                    few,
                    "--also=json=out/r",
                    "--also=sarif=out/r.sarif",
                    "--also=junit=out/r.xml",
                    "--also=markdown=out/r.md");
            int files = few.equals("few") ? 50 : 301;
            assertThat(ran.err()).isEmpty();
            assertThat(ran.code()).isEqualTo(few.equals("few") ? one : 3);
            assertThat(ran.out()).contains("\n" + files + " files checked, ");
            assertThat(count(folder.resolve("out/r.sarif"), "analysisTarget")).isEqualTo(files);
            assertThat(count(folder.resolve("out/r"), "unsolvedWithout")).isEqualTo(files);
        }
    }

    /** How often a field or text stands in a JSON file that is too large to be held. */
    private static int count(Path json, String what) throws IOException {
        int count = 0;
        try (JsonParser parser = new ObjectMapper().createParser(json.toFile())) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                boolean named = token == JsonToken.FIELD_NAME || token == JsonToken.VALUE_STRING;
                count += named && parser.getText().equals(what) ? 1 : 0;
            }
        }
        return count;
    }

    @Test
    void a_long_run_tells_a_terminal_how_far_it_is_and_wipes_that_out() throws Exception {
        Path script = Path.of("/usr/bin/script"); // runs a command on a terminal of its own
        Assumptions.assumeTrue(Files.exists(script));
        for (int i = 0; i < 60; i++) {
            design(String.format(Locale.ROOT, "p%02d.yaml", i));
        }
        String command = String.join(" ", RealJar.command(List.of(), "check", ".")) + " > found.txt";
        Process process = new ProcessBuilder(script.toString(), "-qec", command, "/dev/null")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .start();
        process.getOutputStream().close();
        String seen = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(seen).contains("\rleat: 50 of 60 designs").endsWith(" \r");
        assertThat(Files.readString(folder.resolve("found.txt"))).doesNotContain("of 60 designs");
        assertThat(leat.run("check", ".").err()).isEmpty();
    }
}
