package org.leat.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Where there is no number there is a reason or nothing, never a number that stands for none. The compiler writes constants into
 * the classes that name them, so this reads the sources.
 */
class NumbersOrReasonsTest {

    /** Constants, and the questions that somebody asks who was handed one. */
    private static final Pattern STAND_INS = Pattern.compile(
            "Double\\.(POSITIVE_INFINITY|NEGATIVE_INFINITY|NaN|MAX_VALUE|MIN_VALUE|isNaN|isInfinite)|@Nullable Double");

    @Test
    void no_number_of_the_plant_stands_for_none() throws IOException {
        assertThat(standIns(Path.of("src/main/java/org/leat/plant"))).isEmpty();
    }

    @Test
    void no_rule_and_no_part_of_the_checker_lets_a_number_stand_for_none() throws IOException {
        assertThat(standIns(Path.of("../hydro-rules/src/main/java/org/leat/check")))
                .isEmpty();
        assertThat(standIns(Path.of("../hydro-rules/src/main/java/org/leat/pack")))
                .isEmpty();
    }

    @Test
    void they_are_found_where_they_are() throws IOException {
        assertThat(standIns(Path.of("src/main/java/org/leat/season"))).isNotEmpty();
    }

    private static List<String> standIns(Path sources) throws IOException {
        try (Stream<Path> files = Files.walk(sources)) {
            List<Path> all = files.filter(f -> f.toString().endsWith(".java")).toList();
            assertThat(all).hasSizeGreaterThan(5);
            return all.stream()
                    .flatMap(NumbersOrReasonsTest::lines)
                    .filter(line -> STAND_INS.matcher(line).find())
                    .toList();
        }
    }

    private static Stream<String> lines(Path file) {
        try {
            return Files.readAllLines(file).stream().map(line -> file.getFileName() + ": " + line.strip());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
