package org.leat.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.leat.design.Texts;
import org.leat.file.DesignReader;
import org.leat.file.Problem;
import org.leat.file.ProblemText;
import org.leat.file.Reading;

/**
 * The demo files with a few things done to each: whatever comes of it is problems with their places, or a plant that is
 * solved or says why it is not. {@code -Dleat.mutants=21000} tries more than the gate does.
 */
class MutatedDesignsTest {

    private static final int MUTANTS = Integer.getInteger("leat.mutants", 2000);

    /** Of how many one is solved in every situation in the gate; of more mutants every one. */
    private static final int SOLVED = MUTANTS > 2000 ? 1 : 16;

    private static List<String> demos() throws IOException {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("..", "hydro-examples", "designs"))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
                texts.add(Files.readString(file));
            }
        }
        return texts;
    }

    @Test
    @Timeout(value = 2, unit = TimeUnit.HOURS)
    void a_mutated_file_gives_problems_with_their_places_or_a_plant_that_can_be_asked_everything() throws IOException {
        List<String> demos = demos();
        assertThat(demos).hasSizeGreaterThan(3);
        int designs = 0;
        int solved = 0;
        TreeMap<String, Integer> kinds = new TreeMap<>();
        for (int seed = 0; seed < MUTANTS; seed++) {
            String text = Mutant.of(demos.get(seed % demos.size()), seed);
            try {
                Reading reading = DesignReader.read(text, "f");
                assertThat(reading.design() == null)
                        .isEqualTo(!reading.problems().isEmpty());
                for (Problem problem : reading.problems()) {
                    kinds.merge(problem.kind().id(), 1, Integer::sum);
                    told(problem);
                }
                if (reading.design() != null) {
                    designs++;
                    Plant plant = Plant.of(reading.design());
                    assertThat(plant.assumptions()).isNotNull();
                    if (designs % SOLVED == 0) {
                        solved++;
                        assertThat(Everything.of(reading.design())).isPositive();
                    }
                }
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError | AssertionError e) {
                throw new AssertionError("mutant " + seed + ": " + e, e);
            }
        }
        assertThat(designs).isBetween(MUTANTS / 5, MUTANTS * 4 / 5);
        assertThat(solved).isGreaterThan(MUTANTS / 100);
        assertThat(kinds).hasSizeGreaterThan(15);
    }

    private static void told(Problem problem) {
        String line = ProblemText.line(problem);
        assertThat(line.length()).isLessThan(12_000);
        assertThat(Texts.firstUnwritable(line)).as(line).isEqualTo(-1);
        assertThat(problem.position().line()).isPositive();
        assertThat(problem.position().column()).isPositive();
        assertThat(problem.path()).startsWith("/");
    }

    @Test
    void a_mutant_is_the_same_for_the_same_seed_and_differs_from_its_file() throws IOException {
        String demo = demos().get(0);
        int same = 0;
        for (int seed = 0; seed < 200; seed++) {
            assertThat(Mutant.of(demo, seed)).isEqualTo(Mutant.of(demo, seed));
            same += Mutant.of(demo, seed).equals(demo) ? 1 : 0;
        }
        assertThat(same).isLessThan(40);
    }
}
