package org.leat.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.design.Gauging;
import org.leat.file.DesignReader;
import org.leat.file.Filled;
import org.leat.file.Problem;
import org.leat.file.ProblemText;
import org.leat.file.Reading;
import org.leat.file.RecordReader;
import org.leat.plant.Plant;
import org.leat.readings.PlantLog;
import org.leat.readings.PlantReadings;
import org.leat.report.BaselineReader;
import org.leat.rulefile.RuleFile;
import org.leat.season.SeriesReader;
import org.leat.settings.SettingsFiles;

/**
 * What a fuzzer feeds: the first byte says as what the rest is read, or {@code -Dleat.fuzz-as} for all of a run. Whatever it is, a reader answers with what it read or with
 * problems that have a place and can be told, and throws nothing.
 */
public final class AnyFile {

    /** What can be read, in the order of the first byte. */
    enum As {
        DESIGN,
        SETTINGS,
        RULES,
        READINGS,
        READINGS_TABLE,
        LOG,
        GAUGING,
        SERIES,
        BASELINE
    }

    private static final @Nullable String ONLY = System.getProperty("leat.fuzz-as");
    private static final Path FILE = file();

    private AnyFile() {}

    private static Path file() {
        try {
            Path file = Files.createTempFile("leat-fuzz", ".yaml");
            file.toFile().deleteOnExit();
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Called by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] data) throws IOException {
        if (data.length == 0) {
            return;
        }
        As as = ONLY != null ? As.valueOf(ONLY) : As.values()[Math.floorMod(data[0], As.values().length)];
        byte[] content = Arrays.copyOfRange(data, 1, data.length);
        if (as != As.DESIGN && as != As.SERIES) {
            Files.write(FILE, content);
        }
        switch (as) {
            case DESIGN -> design(content);
            case SETTINGS -> told(SettingsFiles.read(FILE).problems());
            case RULES -> told(RuleFile.read(FILE).problems());
            case READINGS -> told(RecordReader.read(PlantReadings.class, FILE, "f"));
            case READINGS_TABLE -> told(RecordReader.readTable(PlantReadings.class, "sets", FILE, "f"));
            case LOG -> told(RecordReader.readTable(PlantLog.class, "entries", FILE, "f"));
            case GAUGING -> told(RecordReader.read(Gauging.class, FILE, "f"));
            case SERIES -> SeriesReader.read(new String(content, StandardCharsets.ISO_8859_1));
            case BASELINE -> BaselineReader.read(FILE);
        }
    }

    private static void design(byte[] content) {
        Reading reading = DesignReader.read(content, "f");
        told(reading.problems());
        if (reading.design() == null) {
            must(!reading.problems().isEmpty(), "neither a design nor a problem");
        } else {
            must(!Plant.of(reading.design()).toString().isEmpty(), "no plant");
        }
    }

    private static void told(Filled<?> filled) {
        told(filled.problems());
        must((filled.record() == null) == !filled.problems().isEmpty(), "neither a value nor a problem, or both");
    }

    private static void told(List<Problem> problems) {
        for (Problem problem : problems) {
            String line = ProblemText.line(problem);
            must(line.length() < 12_000, "a problem of " + line.length() + " letters");
            must(line.chars().noneMatch(c -> c < ' ' || (c >= 0x7f && c < 0xa0) || c == 0x202e), line);
            must(problem.position().line() > 0 && problem.position().column() > 0, "no place: " + line);
        }
    }

    private static void must(boolean holds, String else_) {
        if (!holds) {
            throw new AssertionError(else_);
        }
    }
}
