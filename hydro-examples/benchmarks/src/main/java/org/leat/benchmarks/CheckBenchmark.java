package org.leat.benchmarks;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.leat.catalogue.Catalogue;
import org.leat.check.Checker;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
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

/** A full check of a demo design held in memory: reading, solving, judging, ways out, ranges of what was assumed. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 12, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class CheckBenchmark {

    @Param({"tannery-yard", "rowan-ghyll", "orchard-sluice", "first-try"})
    public String design;

    private String text;
    private Reading reading;
    private Checker checker;
    private Schema schema;

    @Setup
    public void setUp() throws IOException {
        Path designs = Path.of(System.getProperty("leat.designs", "hydro-examples/designs"));
        text = Files.readString(designs.resolve(design + ".yaml"));
        reading = DesignReader.read(text, design);
        checker = Checker.of(List.of(new BuiltInPack()));
        schema = ValidatorProcess.schema(Path.of(System.getProperty("leat.schema", "docs/design-file.schema.json")));
    }

    /** Text to report, of a design that has nothing in common with those before it. */
    @Benchmark
    public Report readAndCheck() {
        return keepingNothing().check(DesignReader.read(text, design));
    }

    /** The same with the design read before. */
    @Benchmark
    public Report check() {
        return keepingNothing().check(reading);
    }

    /** Text to report, where what is slow was solved before: what an editor or a server pays for one design over and over. */
    @Benchmark
    public Report readAndCheckAgain() {
        return checker.check(DesignReader.read(text, design));
    }

    /** Text to verdicts at the values assumed: no way out is sought and no assumption moved, for sifting many designs. */
    @Benchmark
    public List<Outcome> readAndJudge() {
        return keepingNothing()
                .outcomes(Objects.requireNonNull(DesignReader.read(text, design).design()));
    }

    /** The same rules, and nothing solved yet. */
    private Checker keepingNothing() {
        return checker.with(Catalogue.shipped());
    }

    /** Reading alone, as the peer of the whole. */
    @Benchmark
    public Reading read() {
        return DesignReader.read(text, design);
    }

    /** A JSON Schema validator on the same text, as the peer of the whole check. */
    @Benchmark
    public int validate() {
        return schema.validate(text, InputFormat.YAML).size();
    }
}
