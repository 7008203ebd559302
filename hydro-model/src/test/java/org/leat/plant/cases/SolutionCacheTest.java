package org.leat.plant.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.plant.Plant;

/** What plants have in common is solved once, and is what each finds by itself. */
class SolutionCacheTest {

    private static Design read(String demo) {
        Path file = Path.of("..", "hydro-examples", "designs", demo + ".yaml");
        return Objects.requireNonNull(DesignReader.read(file).design());
    }

    private static List<Double> told(Cases cases) {
        List<Double> told = new ArrayList<>();
        for (Closing closing : cases.closing()) {
            for (int section = 0; section < closing.sections().size(); section++) {
                told.add(closing.peak(section).highest().or(-1));
            }
        }
        for (BrokenBridge broken : cases.broken()) {
            told.add(broken.runnerSpeed());
            told.add(broken.phaseCurrent());
        }
        for (BrokenBridge broken : cases.diodeShorted()) {
            told.add(broken.runnerSpeed());
            told.add(broken.phaseCurrent());
        }
        return told;
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-try", "tannery-yard"})
    void a_design_read_anew_asks_for_nothing_that_was_not_solved(String demo) {
        Cases.Factory factory = new Cases.Factory();
        SolutionCache before = factory.before();
        List<Double> first = told(cases(read(demo), factory));
        int stops = before.partedStops().kept();
        int searches = before.brokenBridges().kept();
        assertThat(stops).isPositive();
        assertThat(searches).isPositive();
        assertThat(told(cases(read(demo), factory))).isEqualTo(first);
        assertThat(before.partedStops().kept()).isEqualTo(stops);
        assertThat(before.brokenBridges().kept()).isEqualTo(searches);
        assertThat(first).isEqualTo(told(Plant.of(read(demo)).solve()));
    }

    private static Cases cases(Design design, Cases.Factory factory) {
        Plant plant = Plant.of(design);
        return factory.of(design, plant.numbers(), plant.unsolvable());
    }
}
