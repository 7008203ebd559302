package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What people unpack who do not build: its start, its manual, its completion. */
@DisabledOnOs(OS.WINDOWS)
class ArchiveIT {

    @TempDir
    private static Path folder;

    private static Path home;

    private record Ran(int code, String out, String err) {}

    private static Ran run(Map<String, String> environment, String... call) throws Exception {
        Path out = Files.createTempFile(folder, "out", "");
        Path err = Files.createTempFile(folder, "err", "");
        ProcessBuilder builder = new ProcessBuilder(call)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().put("LEAT_CACHE", "none");
        builder.environment().putAll(environment);
        Process process = builder.start();
        assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
        return new Ran(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }

    private static String leat() {
        return home.resolve("bin").resolve("leat").toString();
    }

    private static String demo(String name) {
        return home.resolve("examples")
                .resolve("designs")
                .resolve(name + ".yaml")
                .toString();
    }

    @BeforeAll
    static void unpack() throws Exception {
        List<Path> archives;
        try (Stream<Path> built = Files.list(Path.of("target"))) {
            archives = built.filter(p -> p.getFileName().toString().endsWith(".tar.gz"))
                    .map(Path::toAbsolutePath)
                    .toList();
        }
        assertThat(archives).hasSize(1);
        assertThat(run(Map.of(), "tar", "-xzf", archives.get(0).toString()).code())
                .isZero();
        try (Stream<Path> unpacked = Files.list(folder)) {
            home = unpacked.filter(Files::isDirectory).findFirst().orElseThrow();
        }
    }

    @Test
    void the_command_of_the_archive_answers_as_the_jar_does() throws Exception {
        Ran ours = run(Map.of(), leat(), "check", demo("tannery-yard"));
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Ran jar = run(Map.of(), java, "-jar", RealJar.JAR.toString(), "check", demo("tannery-yard"));
        assertThat(ours).isEqualTo(jar);
        assertThat(ours.code()).isEqualTo(1);
        assertThat(run(Map.of(), leat(), "check", demo("rowan-ghyll")).code()).isZero();
        assertThat(run(Map.of(), leat(), "check", "nothing.yaml").code()).isEqualTo(3);
    }

    @Test
    void the_first_start_fills_a_cache_from_a_demo_whatever_is_asked_and_says_nothing_of_it() throws Exception {
        Path cache = folder.resolve("a cache");
        Map<String, String> there = Map.of("LEAT_CACHE", cache.toString());
        assertThat(run(there, leat(), "--version")).isEqualTo(run(Map.of(), leat(), "--version"));
        assertThat(names(cache)).singleElement().asString().endsWith(".jsa");
        Map<String, String> told =
                Map.of("LEAT_CACHE", cache.toString(), "LEAT_JAVA_OPTIONS", "-Xlog:class+load:stderr");
        Ran second = run(told, leat(), "check", demo("rowan-ghyll"));
        assertThat(second.out())
                .isEqualTo(run(Map.of(), leat(), "check", demo("rowan-ghyll")).out());
        assertThat(second.err().lines().filter(line -> line.contains(" org.leat.plant.") && line.contains("(top)")))
                .hasSizeGreaterThan(100);
        assertThat(names(cache)).hasSize(1);
    }

    @Test
    void a_cache_on_a_full_disk_changes_neither_report_nor_code() throws Exception {
        Path small = Files.createDirectory(folder.resolve("small"));
        Assumptions.assumeTrue(
                run(Map.of(), "sh", "-c", "mount -t tmpfs -o size=1m tmpfs '" + small + "'")
                                .code()
                        == 0,
                "no small disk can be made here");
        try {
            Map<String, String> there = Map.of("LEAT_CACHE", small.toString());
            assertThat(run(there, leat(), "check", demo("rowan-ghyll")))
                    .isEqualTo(run(Map.of(), leat(), "check", demo("rowan-ghyll")));
            assertThat(names(small)).isEmpty();
        } finally {
            run(Map.of(), "umount", small.toString());
        }
    }

    @Test
    void a_path_of_folders_for_cd_leads_it_nowhere_else() throws Exception {
        Path elsewhere = Files.createDirectories(folder.resolve("elsewhere").resolve("bin"));
        Ran ran = run(
                Map.of("CDPATH", elsewhere.getParent().toString()),
                "sh",
                "-c",
                "cd '" + home + "' && exec sh bin/leat --version");
        assertThat(ran.code()).as(ran.err()).isZero();
    }

    @Test
    void an_archive_that_is_cut_off_is_made_anew_and_a_folder_that_is_not_there_stops_nothing() throws Exception {
        Path cache = folder.resolve("cut off");
        Map<String, String> there = Map.of("LEAT_CACHE", cache.toString());
        Ran first = run(there, leat(), "rules");
        String name = names(cache).get(0);
        byte[] whole = Files.readAllBytes(cache.resolve(name));
        Files.delete(cache.resolve(name));
        Files.write(cache.resolve(name), Arrays.copyOf(whole, 5000));
        assertThat(run(there, leat(), "rules")).isEqualTo(first);
        assertThat(names(cache)).singleElement().asString().endsWith(".jsa");
        assertThat(Files.size(cache.resolve(names(cache).get(0)))).isGreaterThan(5000);
        Path file = Files.writeString(folder.resolve("a-file"), "");
        assertThat(run(Map.of("LEAT_CACHE", file.resolve("below").toString()), leat(), "rules"))
                .isEqualTo(first);
    }

    @Test
    void classes_are_shared_also_where_the_path_has_a_space_in_it() throws Exception {
        Path apart = Files.createDirectories(folder.resolve("a folder").resolve("lib"))
                .resolveSibling("bin");
        Files.createDirectories(apart);
        Files.copy(Path.of(leat()), apart.resolve("leat"), StandardCopyOption.COPY_ATTRIBUTES);
        Files.copy(home.resolve("lib/leat.jar"), apart.resolveSibling("lib").resolve("leat.jar"));
        Map<String, String> there = Map.of(
                "LEAT_CACHE", folder.resolve("shared").toString(), "LEAT_JAVA_OPTIONS", "-Xlog:class+load:stderr");
        String call = apart.resolve("leat").toString();
        run(there, call, "rules");
        Ran second = run(there, call, "rules");
        assertThat(second.code()).isZero();
        assertThat(second.err().lines().filter(line -> line.contains(" org.leat.") && line.contains("(top)")))
                .hasSizeGreaterThan(100);
    }

    @Test
    void a_java_without_class_data_of_its_own_starts_as_any_other() throws Exception {
        Path trimmed = Files.createDirectories(folder.resolve("trimmed").resolve("bin"));
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Path script = Files.writeString(
                trimmed.resolve("java"),
                "#!/bin/sh\nexec '" + java + "' -Xlog:disable -XX:SharedArchiveFile=/nowhere/classes.jsa \"$@\"\n");
        assertThat(script.toFile().setExecutable(true)).isTrue();
        Path cache = folder.resolve("none of its own");
        Map<String, String> there =
                Map.of("JAVA_HOME", folder.resolve("trimmed").toString(), "LEAT_CACHE", cache.toString());
        assertThat(run(there, leat(), "rules")).isEqualTo(run(Map.of(), leat(), "rules"));
        assertThat(names(cache)).isEmpty();
    }

    @Test
    void a_link_to_the_command_finds_its_jar() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("leat-linked"), Path.of(leat()));
        assertThat(run(Map.of(), link.toString(), "--version").code()).isZero();
    }

    @Test
    void every_command_has_a_manual_page_and_the_completion_is_a_script() throws Exception {
        List<String> commands = new ArrayList<>(List.of("leat.1"));
        Leat.command().getSubcommands().keySet().forEach(name -> commands.add("leat-" + name + ".1"));
        assertThat(names(home.resolve("share/man/man1"))).containsExactlyInAnyOrderElementsOf(commands);
        assertThat(Files.readString(home.resolve("share/man/man1/leat-check.1")))
                .contains(".SH NAME\nleat\\-check \\- ")
                .contains(".B \\-\\-fail\\-on error|warning|note");
        Path completion = home.resolve("share/bash-completion/completions/leat");
        assertThat(run(Map.of(), "bash", "-n", completion.toString())).isEqualTo(new Ran(0, "", ""));
        assertThat(completed(completion, "leat", "che")).isEqualTo("check");
        assertThat(completed(completion, "leat", "check", "--format", "js")).isEqualTo("json");
        assertThat(completed(completion, "leat", "check", "--fail-on", "w")).isEqualTo("warning");
        // where no word fits, the shell completes files
        assertThat(Files.readString(completion)).contains("-o default leat").doesNotContain("+o default");
    }

    private static String completed(Path completion, String... words) throws Exception {
        return run(
                        Map.of(),
                        "bash",
                        "-c",
                        ". '" + completion + "'; COMP_WORDS=(" + String.join(" ", words) + "); COMP_CWORD="
                                + (words.length - 1) + "; _complete_leat; echo \"${COMPREPLY[@]}\"")
                .out()
                .strip();
    }

    @Test
    void the_examples_lead_an_editor_to_schemas_in_the_archive() throws Exception {
        int led = 0;
        try (Stream<Path> files = Files.walk(home.resolve("examples"))) {
            for (Path example :
                    files.filter(f -> f.toString().endsWith(".yaml")).toList()) {
                String text = Files.readString(example);
                String schema = text.substring(text.lastIndexOf("$schema=") + "$schema=".length())
                        .strip();
                assertThat(example.resolveSibling(schema))
                        .as(example.toString())
                        .isRegularFile();
                led++;
            }
        }
        assertThat(led).isGreaterThan(15);
    }

    @Test
    void licence_and_notice_are_in_the_archive_and_in_the_jar() throws Exception {
        assertThat(names(home)).contains("LICENSE", "NOTICE", "README.txt");
        try (JarFile jar = new JarFile(home.resolve("lib/leat.jar").toFile())) {
            assertThat(jar.getEntry("META-INF/LICENSE")).isNotNull();
            assertThat(jar.getEntry("META-INF/NOTICE")).isNotNull();
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }
}
