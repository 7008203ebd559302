package org.leat.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.leat.file.DesignReader;
import org.leat.file.RecordReader;
import org.leat.plant.Plant;
import org.leat.readings.Diagnosis;
import org.leat.readings.Expectations;
import org.leat.readings.FaultTable;
import org.leat.readings.LogStudy;
import org.leat.readings.Observation;
import org.leat.readings.PlantLog;
import org.leat.readings.PlantReadings;
import org.leat.readings.TakenReadings;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A day's readings diagnosed, and a log of a year and more read every hour told. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 6, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ReadingsBenchmark {

    private static final int DAYS = 417;

    /** A day's readings: of one set, of two sets, of two sets with much that can be read. */
    @Param({"rowan-ghyll-november", "rowan-ghyll-april", "rowan-ghyll-second-day"})
    public String readings;

    private Plant plant;
    private FaultTable table;
    private List<Observation> taken;
    private Path file;

    @Setup
    public void setUp() throws IOException {
        Path designs = Path.of(System.getProperty("leat.designs", "hydro-examples/designs"));
        Path read = designs.resolveSibling("readings").resolve(readings + ".yaml");
        plant = Plant.of(Objects.requireNonNull(
                DesignReader.read(designs.resolve("rowan-ghyll.yaml")).design()));
        Expectations expected = Expectations.of(plant);
        table = FaultTable.of(expected);
        PlantReadings day = Objects.requireNonNull(
                RecordReader.read(PlantReadings.class, read, readings).record());
        taken = TakenReadings.of(day, expected).readings();
        file = Files.createTempFile("log", ".csv");
        file.toFile().deleteOnExit();
        Files.writeString(file, log());
    }

    /** Two dozen readings a day, 10 008 in all, the flow and the amperes growing. */
    private static String log() {
        Random random = new Random(5);
        StringBuilder text = new StringBuilder("day,time,running-pressure [bar],speed [rpm],bridge-volts [V],"
                + "battery-volts [V],battery-amps [A],flow [L/s]\n");
        double[] values = {2.92, 1160, 26.8, 26.3, 14.4, 2.25};
        double[] noise = {0.004, 0.0012, 0.0016, 0.0016, 0.005, 0.008};
        for (int day = 0; day < DAYS; day++) {
            for (int hour = 0; hour < 24; hour++) {
                text.append(LocalDate.of(2031, 1, 1).plusDays(day));
                text.append(String.format(Locale.ROOT, ",%02d:00", hour));
                for (int i = 0; i < values.length; i++) {
                    double grown = i >= 4 ? 1 + 2e-4 * day : 1;
                    text.append(String.format(
                            Locale.ROOT, ",%.4f", values[i] * grown * (1 + noise[i] * random.nextGaussian())));
                }
                text.append('\n');
            }
        }
        return text.toString();
    }

    /** A diagnosis where the plant was diagnosed before: what one more set of readings costs. */
    @Benchmark
    public List<Diagnosis.Next> diagnose() {
        return Diagnosis.of(table, taken).next();
    }

    /** The same with every fault of the plant solved anew. */
    @Benchmark
    public List<Diagnosis.Next> solveAndDiagnose() {
        return Diagnosis.of(FaultTable.of(Expectations.of(plant)), taken).next();
    }

    /** The log alone, as the peer of the next. */
    @Benchmark
    public PlantLog readLog() {
        return Objects.requireNonNull(
                RecordReader.readTable(PlantLog.class, "entries", file, "log").record());
    }

    /** From a file of 10 008 rows to what changes on the plant. */
    @Benchmark
    public Optional<LogStudy.Told> readAndTellLog() {
        return LogStudy.of(table, readLog());
    }
}
