package org.leat.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The real jar, run in a folder as a builder runs it. */
record RealJar(Path folder) {

    static final Path JAR = Path.of("target", "leat.jar").toAbsolutePath();

    /** What came of a run. */
    record Ran(int code, String out, String err) {}

    Ran run(String... arguments) throws IOException, InterruptedException {
        return run(List.of(), "", arguments);
    }

    Ran run(List<String> jvm, String input, String... arguments) throws IOException, InterruptedException {
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
            int code = builder.start().waitFor();
            return new Ran(
                    code, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
        } finally {
            Files.delete(out);
            Files.delete(err);
            Files.delete(in);
        }
    }

    static List<String> command(List<String> jvm, String... arguments) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
        command.addAll(jvm);
        command.addAll(List.of("-jar", JAR.toString()));
        command.addAll(List.of(arguments));
        return command;
    }
}
