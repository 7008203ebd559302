package org.leat.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Builds the C peers with the system's compiler and runs them; prints what they print. */
public final class Peers {

    private Peers() {}

    /**
     * Runs every peer.
     *
     * @throws IOException if no C compiler {@code gcc} is found or it refuses a source
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("peers");
        try {
            for (String name : List.of("characteristics", "steady")) {
                Path source = folder.resolve(name + ".c");
                try (InputStream in = Peers.class.getResourceAsStream("/c/" + name + ".c")) {
                    Files.copy(java.util.Objects.requireNonNull(in), source);
                }
                Path program = folder.resolve(name);
                System.out.print(run(List.of("gcc", "-O3", "-o", program.toString(), source.toString(), "-lm")));
                System.out.print(name + " in C: " + run(List.of(program.toString())));
            }
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                files.sorted(Comparator.reverseOrder()).forEach(p -> p.toFile().delete());
            }
        }
    }

    private static String run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IOException(command.get(0) + " failed: " + printed);
        }
        return printed;
    }
}
