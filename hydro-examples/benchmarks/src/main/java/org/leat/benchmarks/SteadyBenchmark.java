package org.leat.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.leat.hydraulics.OpenNozzles;
import org.leat.hydraulics.PenstockSection;
import org.leat.hydraulics.SteadyFlow;
import org.leat.hydraulics.SteadyPenstock;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Steady flow through three sections and one nozzle, the head a little higher each time; {@link Peers} runs the same in C. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class SteadyBenchmark {

    private static final double VISCOSITY = 1.307e-6;
    private static final double DENSITY = 999.7;
    private static final int HEADS = 1_000_000;

    private final SteadyPenstock penstock = new SteadyPenstock(
            List.of(
                    new PenstockSection(2, 0.0504, 1e-5, 0.24),
                    new PenstockSection(60, 0.0548, 1e-5, 0.6),
                    new PenstockSection(58, 0.0504, 1e-5, 0.8)),
            0,
            VISCOSITY);
    private final OpenNozzles nozzle = OpenNozzles.withoutBranches(List.of(0.011), 0.97, 1);
    private int round;

    /** Flow, heads, every section's state and the jet. */
    @Benchmark
    public SteadyFlow solve() {
        round = (round + 1) % HEADS;
        return penstock.solve(32 + 1e-6 * round, nozzle, DENSITY);
    }
}
