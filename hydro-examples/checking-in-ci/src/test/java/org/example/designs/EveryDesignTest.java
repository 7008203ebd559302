package org.example.designs;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.leat.check.Checker;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.file.DesignReader;
import org.leat.pack.BuiltInPack;
import org.leat.report.TextWriter;
import org.leat.report.TextWriter.Colours;

/** Every design of this repository is checked; one with an error fails its own test, with the whole report. */
class EveryDesignTest {

    private static final Path DESIGNS = Path.of("designs");
    private static final Checker CHECKER = Checker.of(List.of(new BuiltInPack()));

    private static List<Path> designs() throws IOException {
        try (Stream<Path> files = Files.list(DESIGNS)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void there_are_designs_to_check() throws IOException {
        assertFalse(designs().isEmpty());
    }

    @TestFactory
    Stream<DynamicTest> has_no_error() throws IOException {
        return designs().stream()
                .map(design -> DynamicTest.dynamicTest(design.getFileName().toString(), () -> {
                    Report report = CHECKER.check(DesignReader.read(design));
                    assertTrue(report.readable() && report.failures(Level.ERROR) == 0, () -> told(report));
                }));
    }

    private static String told(Report report) {
        StringWriter text = new StringWriter();
        try {
            TextWriter writer = new TextWriter(CHECKER.rulebook(), text, Colours.NONE);
            writer.add(report);
            writer.end();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return text.toString();
    }
}
