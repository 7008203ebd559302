package org.example.catchment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.check.Checker;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.file.DesignReader;
import org.leat.pack.BuiltInPack;
import org.leat.plant.Plant;

/** The engine finds what one machine finds, whether its libraries come before ours on the class path or after. */
class CatchmentTest {

    private static final int PLACES = 24;

    @TempDir
    private Path folder;

    private static List<Screened> oneMachine() {
        Plant kind = Screened.kind();
        return LongStream.range(0, PLACES)
                .mapToObj(number -> Screened.all(kind, CandidateSite.of(number)))
                .flatMap(List::stream)
                .toList();
    }

    /** Screens in a process of its own with this class path. */
    private void screen(List<String> classPath, Path into) throws Exception {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx1g"));
        command.addAll(List.of(System.getProperty("spark.opens").split(" ")));
        command.addAll(List.of(
                "-cp",
                String.join(File.pathSeparator, classPath),
                Catchment.class.getName(),
                Integer.toString(PLACES),
                into.toString()));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), printed);
        assertTrue(printed.contains(PLACES * PartSet.SETS + " plants screened"), printed);
    }

    private static List<Screened> read(SparkSession spark, Path from) {
        return spark.read().parquet(from.toString()).orderBy("place", "parts").collectAsList().stream()
                .map(row -> new Screened(
                        row.getLong(0),
                        row.getInt(1),
                        row.getDouble(2),
                        row.getDouble(3),
                        row.getBoolean(4),
                        row.getString(5),
                        row.getDouble(6),
                        row.getDouble(7)))
                .toList();
    }

    @Test
    void the_kind_of_plant_passes_a_check() throws Exception {
        try (InputStream in = Objects.requireNonNull(Screened.class.getResourceAsStream("kind.yaml"))) {
            Report report =
                    Checker.of(List.of(new BuiltInPack())).check(DesignReader.read(in.readAllBytes(), "kind.yaml"));
            assertTrue(report.readable(), "readable");
            assertEquals(
                    List.of(),
                    report.findings().stream()
                            .filter(finding -> finding.outcome().kind() == Kind.FAIL
                                    && finding.outcome().level().compareTo(Level.WARNING) >= 0)
                            .toList());
        }
    }

    @Test
    void the_engine_finds_what_one_machine_finds_with_its_libraries_first_and_last() throws Exception {
        List<String> whole =
                List.of(System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"))
                        .split(File.pathSeparator));
        List<String> ours = whole.stream()
                .filter(path -> path.contains("leat") || path.endsWith("classes"))
                .toList();
        List<String> engine =
                whole.stream().filter(path -> !ours.contains(path)).toList();
        assertTrue(engine.stream().anyMatch(path -> path.contains("jackson-databind")), engine.toString());
        screen(Stream.concat(engine.stream(), ours.stream()).toList(), folder.resolve("last"));
        screen(Stream.concat(ours.stream(), engine.stream()).toList(), folder.resolve("first"));
        List<Screened> alone = oneMachine();
        assertEquals(PLACES * PartSet.SETS, alone.size());
        assertTrue(alone.stream().anyMatch(one -> one.watts() > 100));
        SparkSession spark = Catchment.local();
        try {
            assertEquals(alone, read(spark, folder.resolve("last")));
            assertEquals(alone, read(spark, folder.resolve("first")));
        } finally {
            spark.stop();
        }
    }
}
