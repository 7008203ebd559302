package org.leat.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.leat.file.DesignReader;
import org.leat.plant.Plant;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.solved.OperatingPoint;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The operating point of rowan-ghyll from gross head to battery, the head a little higher each time; {@code python/operating_point.py}
 * is the same plant as an engineer writes it with SciPy, by mean values of the bridge.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 8, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class OperatingPointBenchmark {

    private static final double HEAD = 32;
    private static final int HEADS = 1_000_000;

    private Plant plant;
    private NozzleGroup nozzles;
    private int round;

    @Setup
    public void setUp() throws IOException {
        plant = plant(System.getProperty("leat.designs", "hydro-examples/designs"));
        nozzles = plant.numbers().nozzles().asBuilt();
    }

    private static Plant plant(String designs) throws IOException {
        return Plant.of(Objects.requireNonNull(
                DesignReader.read(Path.of(designs).resolve("rowan-ghyll.yaml")).design()));
    }

    private static Running at(Plant plant, NozzleGroup nozzles, double head) {
        return plant.with(numbers -> numbers.withSite(numbers.site().withGrossHead(head)))
                .running(nozzles);
    }

    /** Water, runner, alternator, bridge, cables, battery and the winding's own warmth. */
    @Benchmark
    public OperatingPoint solve() {
        round = (round + 1) % HEADS;
        return at(plant, nozzles, HEAD + 1e-6 * round).operatingPoint();
    }

    /** Prints what is found at the design's own head, to be read beside what the script finds. */
    public static void main(String[] args) throws IOException {
        Plant plant = plant(args[0]);
        Running running = at(plant, plant.numbers().nozzles().asBuilt(), HEAD);
        System.out.printf(
                Locale.ROOT,
                "%.3f L/s, %.0f rpm, %.2f A%n",
                1000 * running.water().flow(),
                running.operatingPoint().speed() * 30 / Math.PI,
                running.operatingPoint().directCurrent());
    }
}
