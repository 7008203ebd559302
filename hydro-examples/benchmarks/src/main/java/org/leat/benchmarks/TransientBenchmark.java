package org.leat.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.leat.hydraulics.Characteristics;
import org.leat.hydraulics.HeadEnvelope;
import org.leat.hydraulics.LowerEnd;
import org.leat.hydraulics.NozzleOpening;
import org.leat.hydraulics.SurgeLine;
import org.leat.hydraulics.SurgeSection;
import org.leat.hydraulics.UpperEnd;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One transient of 200 reaches and 2 000 steps; {@link Peers} runs the same as a C loop. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 6, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class TransientBenchmark {

    static final double LENGTH = 240;
    static final double WAVE_SPEED = 400;
    static final int REACHES = 200;
    static final int STEPS = 2000;

    private final SurgeLine line =
            new SurgeLine(List.of(new SurgeSection(LENGTH, 0.0971, WAVE_SPEED, 0.019, 0, 0)), 55);
    private final LowerEnd closing = new LowerEnd.Nozzles(NozzleOpening.linear(1, 0, 1.5));

    /** Linear closing in 1.5 s. */
    @Benchmark
    public HeadEnvelope characteristics() {
        return Characteristics.run(
                line, 0.005, new UpperEnd.Open(), closing, REACHES, STEPS * LENGTH / WAVE_SPEED / REACHES);
    }
}
