package org.leat.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.leat.check.Samples;
import org.leat.lazy.Once;

/**
 * The real jar, run in a folder as its script runs it: by the first compiler alone and with an archive of its classes, which is written
 * once for all tests. That takes half the time of a bare {@code java -jar}.
 */
public record RealJar(Path folder) {

    static final Path JAR = Path.of("target", "leat.jar").toAbsolutePath();

    private static final List<String> SHORT_RUN = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");
    private static final Once<List<String>> SHARED = new Once<>(RealJar::shared);

    /** What came of a run. */
    record Ran(int code, String out, String err) {}

    Ran run(String... arguments) throws IOException, InterruptedException {
        return run(List.of(), "", arguments);
    }

    Ran run(List<String> jvm, String input, String... arguments) throws IOException, InterruptedException {
        return run(jvm, Map.of(), input, arguments);
    }

    Ran run(List<String> jvm, Map<String, String> environment, String input, String... arguments)
            throws IOException, InterruptedException {
        Path out = Files.createTempFile("leat", "out");
        Path err = Files.createTempFile("leat", "err");
        Path in = Files.createTempFile("leat", "in");
        try {
            Files.writeString(in, input);
            ProcessBuilder builder = new ProcessBuilder(command(jvm, arguments))
                    .directory(folder.toFile())
                    .redirectInput(in.toFile())
                    .redirectOutput(out.toFile())
                    .redirectError(err.toFile());
            builder.environment().remove("JAVA_TOOL_OPTIONS");
            builder.environment().putAll(environment);
            int code = builder.start().waitFor();
            return new Ran(
                    code, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
        } finally {
            Files.delete(out);
            Files.delete(err);
            Files.delete(in);
        }
    }

    /** What makes a run use the archive; nothing where this Java writes none. */
    private static List<String> shared() {
        Path archive = Path.of("target", "leat-tests.jsa").toAbsolutePath();
        try {
            Files.deleteIfExists(archive);
            Path design = Files.writeString(Files.createTempFile("leat", ".yaml"), Samples.SHORT);
            List<String> quiet = List.of("-Xlog:cds=off", "-Xlog:cds+dynamic=off", "-Xlog:class+path=off");
            List<String> write = new ArrayList<>(quiet);
            write.add("-XX:ArchiveClassesAtExit=" + archive);
            new ProcessBuilder(command(SHORT_RUN, write, "check", design.toString()))
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start()
                    .waitFor();
            Files.delete(design);
            List<String> use = new ArrayList<>(quiet);
            use.add("-XX:SharedArchiveFile=" + archive);
            return Files.exists(archive) ? List.copyOf(use) : List.of();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** {@return a call of the real jar} */
    public static List<String> command(List<String> jvm, String... arguments) {
        List<String> given = new ArrayList<>(SHARED.get());
        given.addAll(jvm);
        return command(SHORT_RUN, given, arguments);
    }

    private static List<String> command(List<String> first, List<String> jvm, String... arguments) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(first);
        command.addAll(jvm);
        command.addAll(List.of("-jar", JAR.toString()));
        command.addAll(List.of(arguments));
        return command;
    }
}
