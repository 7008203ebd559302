package org.leat.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every reader fed by a fuzzer that is guided by coverage, from our own files on. Some hundred inputs in the gate, all readers in
 * one process; {@code -Dleat.fuzz-seconds=3600} for as long as that, every reader alone for its share of it, which tells what each
 * got and keeps what it found in {@code target/fuzz}.
 */
class FuzzIT {

    private static final long SECONDS = Long.getLong("leat.fuzz-seconds", 0);
    private static final Path EXAMPLES = Path.of("../../hydro-examples");
    private static final Path JAR = Path.of("target", "leat.jar").toAbsolutePath();

    @TempDir
    Path folder;

    @Test
    void no_reader_throws_at_whatever_a_fuzzer_makes_of_our_files() throws Exception {
        Assumptions.assumeTrue(
                System.getProperty("os.name").equals("Linux")
                        && System.getProperty("os.arch").equals("amd64"),
                "the fuzzer's own code is for other machines");
        // as a test of the phase "test" it would run before the jar is made, or beside an old one
        assertThat(JAR).isRegularFile();
        if (SECONDS == 0) {
            Path corpus = Files.createDirectories(folder.resolve("corpus"));
            int seeds = 0;
            for (AnyFile.As as : AnyFile.As.values()) {
                seeds += seeds(corpus, as);
            }
            assertThat(seeds).isGreaterThan(15);
            // a seed of its own makes a run of the gate repeatable
            Fuzzed fuzzed = fuzzed(corpus, List.of(), List.of("--keep_going=1", "-runs=150", "-seed=20261"), 300);
            assertThat(fuzzed.code()).as(fuzzed.said()).isZero();
            return;
        }
        List<String> found = new ArrayList<>();
        long share = Math.max(1, SECONDS / AnyFile.As.values().length);
        for (AnyFile.As as : AnyFile.As.values()) {
            Path corpus = Files.createDirectories(Path.of("target/fuzz", as.name()));
            seeds(corpus, as);
            Fuzzed fuzzed = fuzzed(
                    corpus,
                    List.of("-Dleat.fuzz-as=" + as),
                    List.of("--keep_going=20", "-max_total_time=" + share),
                    share + 300);
            System.out.println(as + ": " + fuzzed.figures());
            // one that goes on after what it found ends as if it had found nothing
            if (fuzzed.code() != 0 || fuzzed.said().contains("== libFuzzer crashing input ==")) {
                found.add(as + ": " + fuzzed.said());
            }
        }
        assertThat(found).isEmpty();
    }

    private record Fuzzed(int code, String said) {

        private static final Pattern UNITS = Pattern.compile("stat::number_of_executed_units:\\s*(\\d+)");
        private static final Pattern LAST = Pattern.compile("(?m)^#\\d+\\s+DONE\\s+(.*)$");

        /** How many inputs, and what the fuzzer says of coverage and corpus at its end. */
        String figures() {
            Matcher last = LAST.matcher(said);
            // it says so after everything that it finds too: the last counts
            return last.find()
                    ? UNITS.matcher(said)
                                    .results()
                                    .reduce((first, second) -> second)
                                    .map(units -> units.group(1))
                                    .orElse("unknown")
                            + " inputs, " + last.group(1).strip()
                    : "not ended";
        }
    }

    private Fuzzed fuzzed(Path corpus, List<String> properties, List<String> bounds, long seconds) throws Exception {
        Path out = Files.createTempFile(folder, "out", ".txt");
        Process fuzzer = new ProcessBuilder(command(corpus, properties, bounds))
                .directory(corpus.toFile())
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        boolean ended = fuzzer.waitFor(seconds, TimeUnit.SECONDS);
        fuzzer.destroyForcibly().waitFor();
        String said = Files.readString(out, StandardCharsets.UTF_8);
        assertThat(ended).isTrue();
        assertThat(said).contains("Done ").contains("cov:");
        return new Fuzzed(fuzzer.exitValue(), said);
    }

    private static List<String> command(Path corpus, List<String> properties, List<String> bounds) throws Exception {
        Set<String> classes = new LinkedHashSet<>();
        classes.add(JAR.toString());
        classes.add(holding("org/leat/fuzz/AnyFile.class"));
        classes.add(holding("com/code_intelligence/jazzer/Jazzer.class"));
        classes.add(holding("com/code_intelligence/jazzer/api/FuzzedDataProvider.class"));
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                // all of the compiler pays in a long run only
                SECONDS > 0 ? "-XX:TieredStopAtLevel=4" : "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmx512m"));
        command.addAll(properties);
        command.addAll(List.of(
                "-cp",
                String.join(File.pathSeparator, classes),
                "com.code_intelligence.jazzer.Jazzer",
                "--target_class=" + AnyFile.class.getName(),
                "--instrumentation_includes=org.leat.**:org.snakeyaml.**",
                // its rewriting loses a field of that name
                "--instrumentation_excludes=org.leat.file.Filled",
                "--custom_hook_includes=org.leat.**",
                "-max_len=20000",
                "-timeout=100",
                "-rss_limit_mb=2000",
                "-print_final_stats=1"));
        command.addAll(bounds);
        command.add(corpus.toAbsolutePath().toString());
        return command;
    }

    private static String holding(String name) throws Exception {
        URL url = ClassLoader.getSystemResource(name);
        String text = url.toString();
        String root = text.startsWith("jar:")
                ? text.substring("jar:".length(), text.indexOf("!/"))
                : text.substring(0, text.length() - name.length());
        return Path.of(URI.create(root)).toString();
    }

    private static int seeds(Path corpus, AnyFile.As as) throws IOException {
        int seeds = 0;
        for (byte[] content : texts(as)) {
            byte[] seed = new byte[1 + content.length];
            seed[0] = (byte) as.ordinal();
            System.arraycopy(content, 0, seed, 1, content.length);
            Files.write(corpus.resolve("seed-" + as + "-" + seeds), seed);
            seeds++;
        }
        return seeds;
    }

    private static List<byte[]> texts(AnyFile.As as) throws IOException {
        List<byte[]> texts = new ArrayList<>();
        switch (as) {
            case DESIGN -> in("designs", "yaml", texts);
            case READINGS, GAUGING -> in("readings", "yaml", texts);
            case READINGS_TABLE, LOG -> in("readings", "csv", texts);
            case SERIES -> in("streams", "csv", texts);
            case SETTINGS -> of("settings.md", texts);
            case RULES -> of("own-rules.md", texts);
            case BASELINE ->
                texts.add("{\"version\": \"2.1.0\", \"runs\": [{\"results\": [{\"ruleId\": \"penstock/velocity\"}]}]}"
                        .getBytes(StandardCharsets.UTF_8));
        }
        return texts;
    }

    private static void of(String page, List<byte[]> texts) throws IOException {
        blocks(page).forEach(block -> texts.add(block.getBytes(StandardCharsets.UTF_8)));
    }

    private static void in(String folder, String ending, List<byte[]> texts) throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES.resolve(folder))) {
            for (Path file : files.filter(f -> f.toString().endsWith("." + ending))
                    .sorted()
                    .toList()) {
                texts.add(Files.readAllBytes(file));
            }
        }
    }

    /** Blocks of YAML or JSON in a page of the guide. */
    private static List<String> blocks(String page) throws IOException {
        return Pattern.compile("(?ms)^```(?:yaml|json)\\n(.*?)^```")
                .matcher(Files.readString(Path.of("../../docs").resolve(page)))
                .results()
                .map(block -> block.group(1))
                .toList();
    }
}
