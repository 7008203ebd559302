package org.leat.relocated;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The artifact beside an engine that carries other versions of the same libraries, before it and after it on the class path. */
class RelocatedIT {

    private static final Path DESIGN = Path.of("..", "..", "hydro-examples", "designs", "rowan-ghyll.yaml");

    @TempDir
    private Path folder;

    private static Path jar() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("target"))) {
            return files.filter(file ->
                            file.getFileName().toString().matches("hydro-rules-relocated-[0-9][^-]*(-SNAPSHOT)?\\.jar"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    /** What stays a dependency of the artifact. */
    private static List<String> others() {
        return Stream.of(System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"))
                        .split(File.pathSeparator))
                .filter(path -> path.matches(
                        ".*(indriya|unit-api|uom-lib|commons-math3|jakarta\\.inject|jspecify|apiguardian).*"))
                .toList();
    }

    /** Classes of the engine's under the libraries' names, that nothing can be done with. */
    private String engine() throws IOException {
        Path sources = Files.createDirectories(folder.resolve("engine"));
        List<String> names = List.of(
                "com.fasterxml.jackson.databind.ObjectMapper",
                "com.fasterxml.jackson.core.JsonFactory",
                "com.fasterxml.jackson.dataformat.csv.CsvMapper",
                "org.snakeyaml.engine.v2.api.LoadSettings",
                "org.snakeyaml.engine.v2.resolver.CoreScalarResolver");
        List<String> command = new ArrayList<>(List.of("-proc:none", "-d", sources.toString()));
        for (String name : names) {
            int dot = name.lastIndexOf('.');
            Path source = sources.resolve(name.substring(dot + 1) + ".java");
            Files.writeString(
                    source, "package " + name.substring(0, dot) + "; public class " + name.substring(dot + 1) + " { }");
            command.add(source.toString());
        }
        assertThat(ToolProvider.getSystemJavaCompiler().run(null, null, null, command.toArray(String[]::new)))
                .isZero();
        return sources.toString();
    }

    private record Ran(int code, String printed) {}

    private static Ran run(List<String> path) throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        String.join(File.pathSeparator, path),
                        CheckOne.class.getName(),
                        DESIGN.toString())
                .redirectErrorStream(true)
                .start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ran(process.waitFor(), printed);
    }

    private static List<String> path(String... first) throws IOException {
        List<String> path = new ArrayList<>(List.of(first));
        path.addAll(others());
        path.add(Path.of("target", "test-classes").toString());
        return path;
    }

    @Test
    void an_engine_s_libraries_before_and_after_it_make_no_difference() throws Exception {
        String engine = engine();
        Ran first = run(path(engine, jar().toString()));
        assertThat(first.printed()).startsWith("0 errors, ").contains(" W, ");
        assertThat(first.code()).isZero();
        List<String> last = path(jar().toString());
        last.add(engine);
        assertThat(run(last)).isEqualTo(first);
    }

    @Test
    void nothing_in_it_keeps_the_libraries_names() throws Exception {
        try (JarFile jar = new JarFile(jar().toFile())) {
            assertThat(jar.stream().map(entry -> entry.getName()))
                    .anyMatch(name -> name.startsWith("org/leat/relocated/jackson/databind/"))
                    .anyMatch(name -> name.startsWith("org/leat/relocated/snakeyaml/"))
                    .anyMatch(name -> name.equals("org/leat/check/Checker.class"))
                    .noneMatch(name -> name.startsWith("com/fasterxml/") || name.startsWith("org/snakeyaml/"))
                    .noneMatch(name -> name.startsWith("javax/measure/") || name.endsWith("module-info.class"));
            List<String> naming = new ArrayList<>();
            for (var entry : Collections.list(jar.entries())) {
                if (entry.getName().endsWith(".class")) {
                    try (InputStream in = jar.getInputStream(entry)) {
                        String bytes = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
                        if (bytes.contains("com/fasterxml/jackson") || bytes.contains("org/snakeyaml/engine")) {
                            naming.add(entry.getName());
                        }
                    }
                }
            }
            assertThat(naming).isEmpty();
        }
    }
}
