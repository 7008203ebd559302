package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leat.check.PackJar;
import org.leat.check.Samples;

/** The real jar where the world around it is not as it should be. */
@Timeout(300) // not a claim about speed: what waits for a pipe never ends
class RobustIT {

    @TempDir
    Path folder;

    private RealJar leat;

    @BeforeEach
    void jar() throws IOException {
        leat = new RealJar(folder);
        Files.writeString(folder.resolve("a.yaml"), Samples.SHORT);
    }

    private static int ran(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        return process.waitFor(30, TimeUnit.SECONDS) ? process.exitValue() : -1;
    }

    private void pipe(String name) throws Exception {
        try {
            Assumptions.assumeTrue(ran("mkfifo", folder.resolve(name).toString()) == 0, "no named pipes here");
        } catch (IOException e) {
            Assumptions.abort("no named pipes here");
        }
    }

    @Test
    void a_stack_that_is_used_up_is_never_taken_for_a_finding() throws Exception {
        RealJar.Ran ran = leat.run(List.of("-Xss140k"), "", "rules");
        Assumptions.assumeFalse(ran.err().contains("stack size"), "this Java takes no stack as small");
        assertThat(ran.code()).isIn(0, 4);
        RealJar.Ran checked = leat.run(List.of("-Xss140k"), "", "check", "--fail-on", "error", "a.yaml");
        if (!checked.out().contains("\n1 file checked, ")) {
            assertThat(checked.code()).isEqualTo(4);
        }
    }

    @Test
    void an_output_never_replaces_what_is_no_ordinary_file() throws Exception {
        pipe("pipe");
        Files.createDirectory(folder.resolve("sub"));
        Files.createSymbolicLink(folder.resolve("to-pipe"), Path.of("pipe"));
        Files.createSymbolicLink(folder.resolve("to-sub"), Path.of("sub"));
        Files.createSymbolicLink(folder.resolve("astray"), Path.of("nowhere"));
        Files.createSymbolicLink(folder.resolve("to-device"), Path.of("/dev/null"));
        for (String[] one : new String[][] {
            {"pipe", "it is no ordinary file"},
            {"to-pipe", "it is no ordinary file"},
            {"sub", "it is a folder"},
            {"to-sub", "it is a folder"},
            {"astray", "the link leads nowhere"},
            {"to-device", "it is no ordinary file"}
        }) {
            Object before = Files.readAttributes(folder.resolve(one[0]), "fileKey", LinkOption.NOFOLLOW_LINKS);
            RealJar.Ran ran = leat.run("check", "--also", "json=" + one[0], "a.yaml");
            assertThat(ran.code()).as(one[0]).isEqualTo(2);
            assertThat(ran.err()).contains(one[0] + " cannot be written: " + one[1]);
            assertThat(Files.readAttributes(folder.resolve(one[0]), "fileKey", LinkOption.NOFOLLOW_LINKS))
                    .isEqualTo(before);
        }
        assertThat(Files.isRegularFile(Path.of("/dev/null"))).isFalse();
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void a_link_to_an_ordinary_file_stays_and_the_file_is_written() throws Exception {
        Files.writeString(folder.resolve("real.json"), "old");
        Files.createSymbolicLink(folder.resolve("link.json"), Path.of("real.json"));
        leat.run("check", "--also", "json=link.json", "a.yaml");
        assertThat(Files.isSymbolicLink(folder.resolve("link.json"))).isTrue();
        assertThat(Files.readString(folder.resolve("real.json"))).startsWith("{");
    }

    @Test
    void a_full_disk_leaves_no_part_of_a_file_and_is_told_by_the_files_name() throws Exception {
        Path small = Files.createDirectory(folder.resolve("small"));
        boolean mounted;
        try {
            mounted = ran("mount", "-t", "tmpfs", "-o", "size=16k", "tmpfs", small.toString()) == 0;
        } catch (IOException e) {
            mounted = false;
        }
        Assumptions.assumeTrue(mounted, "no small disk can be made here");
        try {
            RealJar.Ran ran = leat.run("check", "--also", "json=small/report.json", "a.yaml");
            assertThat(ran.code()).isEqualTo(4);
            assertThat(ran.err()).contains("small/report.json cannot be written: ");
            assertThat(small).isEmptyDirectory();
        } finally {
            ran("umount", small.toString());
        }
    }

    @Test
    void a_pipe_in_a_folder_is_left_aside_with_a_word_and_not_waited_for() throws Exception {
        pipe("p.yaml");
        Files.createSymbolicLink(folder.resolve("d.yaml"), Path.of("/dev/zero"));
        RealJar.Ran ran = leat.run("check", ".");
        assertThat(ran.out()).contains("\n1 file checked, ");
        assertThat(ran.err()).isEqualTo("leat: left aside, for they are no ordinary files: d.yaml, p.yaml\n");
    }

    @Test
    void one_bad_file_never_stops_the_rest() throws Exception {
        pipe("pipe.yaml");
        Files.write(folder.resolve("bytes.yaml"), new byte[] {(byte) 0xC3, 0x28, 0, 1});
        Files.writeString(folder.resolve("large.yaml"), "x".repeat((1 << 20) + 1));
        Files.writeString(folder.resolve("deep.yaml"), "[".repeat(50_000));
        Files.createSymbolicLink(folder.resolve("astray.yaml"), Path.of("nowhere"));
        Files.createSymbolicLink(folder.resolve("round.yaml"), Path.of("round.yaml"));
        Files.writeString(folder.resolve("z.yaml"), Samples.SHORT.replace("name: sample", "name: last one"));
        RealJar.Ran ran = leat.run(
                "check",
                "pipe.yaml",
                "bytes.yaml",
                "large.yaml",
                "deep.yaml",
                "astray.yaml",
                "round.yaml",
                "missing.yaml",
                "z.yaml");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).contains("z.yaml: last one", "\n8 files checked, 7 not readable as designs");
    }

    @Test
    void a_file_name_that_the_locale_cannot_write_stops_nothing() throws Exception {
        Path designs = Files.createDirectory(folder.resolve("designs"));
        Files.move(folder.resolve("a.yaml"), designs.resolve("a.yaml"));
        String copy = "cp " + designs + "/a.yaml " + designs + "/\"$(printf 'b\\377\\303.yaml')\"";
        Assumptions.assumeTrue(ran("sh", "-c", copy) == 0, "names are text here");
        RealJar.Ran ran = leat.run(
                List.of(),
                Map.of("LC_ALL", "C"),
                "",
                "check",
                "--also",
                "json=o.json",
                "--also",
                "sarif=o.sarif",
                "--also",
                "junit=o.xml",
                "designs");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isIn(0, 1);
        assertThat(ran.out()).contains("\n2 files checked, ");
        ObjectMapper json = new ObjectMapper();
        assertThat(json.readTree(folder.resolve("o.json").toFile()).path("designs"))
                .hasSize(2);
        assertThat(json.readTree(folder.resolve("o.sarif").toFile()).path("runs"))
                .hasSize(1);
        assertThat(DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(folder.resolve("o.xml").toFile())
                        .getDocumentElement()
                        .getTagName())
                .isEqualTo("testsuites");
    }

    @Test
    void what_a_pack_prints_stays_out_of_the_report() throws Exception {
        Path jar = PackJar.jar(folder, "example.Chatter", """
                package example;

                import java.util.List;
import java.util.Map;
                import java.util.Map;
                import org.leat.check.Rule;
                import org.leat.check.RulePack;

                public final class Chatter implements RulePack {
                    public String name() {
                        System.out.println("good morning");
                        return "chatter";
                    }
                    public List<Rule> rules() { return List.of(); }
                    public Map<String, String> texts() { return Map.of(); }
                }
                """);
        RealJar.Ran ran = leat.run("check", "--pack", jar.toString(), "--format", "json", "a.yaml");
        assertThat(new ObjectMapper().readTree(ran.out()).path("designs")).hasSize(1);
        assertThat(ran.err()).contains("good morning");
    }

    @ParameterizedTest
    @ValueSource(strings = {"name", "judge"})
    void a_pack_that_ends_the_program_makes_nothing_look_judged(String where) throws Exception {
        String source = """
                package example;

                import java.util.List;
import java.util.Map;
                import java.util.Map;
                import org.leat.check.Level;
                import org.leat.check.Outcome;
                import org.leat.check.Rule;
                import org.leat.check.RulePack;

                public final class Leaver implements RulePack {
                    private static final Rule RULE = Rule.of("leaver/leaves", Level.ERROR, "leaves")
                            .why("none").formula("none").judged("never").source("none")
                            .passes("stays", "It stays.")
                            .judge(j -> { /*judge*/ return j.at("/").says("stays"); })
                            .build();
                    public String name() { /*name*/ return "leaver"; }
                    public List<Rule> rules() { return List.of(RULE); }
                    public Map<String, String> texts() { return Map.of(); }
                }
                """;
        Path jar = PackJar.jar(
                Files.createDirectory(folder.resolve("leaving")),
                "example.Leaver",
                source.replace("/*" + where + "*/", "System.exit(0);"));
        RealJar.Ran ran = leat.run("check", "--pack", jar.toString(), "a.yaml");
        assertThat(ran.code()).isEqualTo(4);
        assertThat(ran.err()).contains("leat: a pack ended the program before everything was judged\n");
    }

    @Test
    void a_rule_that_is_begun_right_is_the_nearest() throws Exception {
        String said = "penstock/friction-share";
        assertThat(leat.run("explain", "penstock/friction").err()).contains(said);
        assertThat(leat.run("mend", "--rule", "penstock/friction", "a.yaml").err())
                .contains(said);
        Files.writeString(
                folder.resolve("s.yaml"), "format: 1\nrules: { penstock/friction: { level: note, reason: x } }\n");
        assertThat(leat.run("check", "--settings", "s.yaml", "a.yaml").err()).contains(said);
    }

    @Test
    void a_reader_that_has_read_enough_is_no_error() throws Exception {
        Process process = new ProcessBuilder(RealJar.command(List.of(), "schema")).start();
        process.getOutputStream().close();
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(out.readLine()).isEqualTo("{");
        }
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isZero();
        assertThat(err).isEmpty();
    }
}
