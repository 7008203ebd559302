package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The steps that the repository offers to services which build, run as the services would: by a shell, with their words. */
@DisabledOnOs(OS.WINDOWS)
class ServiceStepsIT {

    private static final Path ROOT = Path.of("..", "..").toAbsolutePath().normalize();
    private static final Path DESIGNS = ROOT.resolve("hydro-examples/designs");

    @TempDir
    private Path folder;

    private String archive;

    @BeforeEach
    void find_the_archive() throws IOException {
        try (Stream<Path> built = Files.list(Path.of("target"))) {
            archive = built.filter(p -> p.getFileName().toString().endsWith(".tar.gz"))
                    .map(p -> p.toUri().toString())
                    .collect(Collectors.joining());
        }
        Files.createDirectories(folder.resolve("designs/of the valley"));
    }

    private void design(String name) throws IOException {
        Files.copy(DESIGNS.resolve(name + ".yaml"), folder.resolve("designs/of the valley/" + name + ".plant.yaml"));
    }

    private int run(Map<String, String> environment, String... call) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(call)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log.txt").toFile());
        builder.environment().put("LEAT_CACHE", "none");
        builder.environment().putAll(environment);
        Process process = builder.start();
        assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
        return process.exitValue();
    }

    @SuppressWarnings("unchecked")
    private static <T> T yaml(String file) throws IOException {
        return (T) new Load(LoadSettings.builder().build()).loadFromString(Files.readString(ROOT.resolve(file)));
    }

    /** Runs the two steps of the action; the code of the one that checks. */
    private int action(String designs, String arguments) throws Exception {
        Map<String, Map<String, List<Map<String, Object>>>> action = yaml(".github/actions/check-designs/action.yml");
        Map<String, String> words = new LinkedHashMap<>(Map.of(
                "RUNNER_TEMP",
                folder.toString(),
                "GITHUB_OUTPUT",
                folder.resolve("output.txt").toString(),
                "GITHUB_STEP_SUMMARY",
                folder.resolve("summary.md").toString(),
                "DESIGNS",
                designs,
                "ARGUMENTS",
                arguments,
                "ARCHIVE",
                archive,
                "VERSION",
                "0.1.0",
                "SHA256",
                ""));
        words.put("HERE", "https://nowhere.invalid");
        int code = -1;
        for (Map<String, Object> step : action.get("runs").get("steps")) {
            if (step.get("run") instanceof String script) {
                code = run(words, "bash", "--noprofile", "--norc", "-eo", "pipefail", "-c", script);
                if (step.get("id") == null) {
                    assertThat(code)
                            .as(Files.readString(folder.resolve("log.txt")))
                            .isZero();
                }
            }
        }
        return code;
    }

    @Test
    void the_action_ends_with_the_code_of_the_check_and_keeps_its_reports() throws Exception {
        design("tannery-yard");
        assertThat(action("designs\n\n", "--problems-only\n")).isEqualTo(1);
        Map<String, String> outputs = Files.readAllLines(folder.resolve("output.txt")).stream()
                .map(line -> line.split("=", 2))
                .collect(Collectors.toMap(pair -> pair[0], pair -> pair[1]));
        assertThat(Path.of(outputs.get("sarif")))
                .content(StandardCharsets.UTF_8)
                .contains("\"ruleId\"");
        assertThat(Path.of(outputs.get("junit")))
                .content(StandardCharsets.UTF_8)
                .contains("<failure");
        assertThat(folder.resolve("summary.md")).content(StandardCharsets.UTF_8).contains("Tannery yard");
        Files.writeString(folder.resolve("designs/broken.yaml"), "site: {");
        assertThat(action("designs/broken.yaml", "")).isEqualTo(3);
        assertThat(action("designs", "--no-such-word")).isEqualTo(2);
        // nothing was checked: a report of the use before would be a false one
        assertThat(Path.of(outputs.get("sarif"))).doesNotExist();
    }

    @Test
    void the_job_ends_with_the_code_of_the_check_and_keeps_its_reports() throws Exception {
        Map<String, Map<String, Object>> file = yaml(".gitlab/check-designs.yml");
        Map<String, Object> job = file.get("check-designs");
        design("tannery-yard");
        String script = String.join(
                "\n",
                ((List<?>) job.get("script")).stream().map(String::valueOf).toList());
        assertThat(run(Map.of("LEAT_ARCHIVE", archive, "LEAT_DESIGNS", "designs"), "sh", "-ec", script))
                .isEqualTo(1);
        Map<?, ?> artifacts = (Map<?, ?>) job.get("artifacts");
        assertThat(artifacts.get("when")).isEqualTo("always");
        for (Object path : (List<?>) artifacts.get("paths")) {
            assertThat(folder.resolve(path.toString())).isNotEmptyFile();
        }
    }

    @Test
    void the_hook_is_for_files_named_so_and_calls_the_command() throws Exception {
        List<Map<String, Object>> hooks = yaml(".pre-commit-hooks.yaml");
        Map<String, Object> hook = hooks.get(0);
        List<String> args =
                ((List<?>) hook.get("args")).stream().map(String::valueOf).toList();
        assertThat("designs/a.plant.yaml").containsPattern(String.valueOf(hook.get("files")));
        assertThat("designs/a.yaml").doesNotContainPattern(String.valueOf(hook.get("files")));
        assertThat(run(Map.of(), "tar", "-xzf", Path.of(URI.create(archive)).toString(), "--strip-components", "1"))
                .isZero();
        Files.writeString(folder.resolve("-h.plant.yaml"), "site: {");
        String path = folder.resolve("bin") + ":" + System.getenv("PATH");
        assertThat(run(
                        Map.of("PATH", path),
                        "sh",
                        "-c",
                        hook.get("entry") + " " + String.join(" ", args) + " \"$@\"",
                        "sh",
                        // one who would like to be a call for help
                        "-h.plant.yaml"))
                .isEqualTo(3);
    }
}
