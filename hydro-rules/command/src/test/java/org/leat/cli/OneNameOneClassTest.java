package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** No two classes of the product and of its example projects share a name, whatever package or module they are in: who reads one name means one class. */
class OneNameOneClassTest {

    private static final List<Path> MODULES =
            List.of(Path.of("../../hydro-model"), Path.of("../../hydro-rules"), Path.of("../../hydro-examples"));
    private static final Path MAIN = Path.of("src/main/java");

    @Test
    void no_two_classes_have_one_name() throws IOException {
        Map<String, List<Path>> byName = new TreeMap<>();
        for (Path module : MODULES) {
            try (Stream<Path> files = Files.walk(module)) {
                files.filter(OneNameOneClassTest::isClass)
                        .collect(Collectors.groupingBy(f -> f.getFileName().toString()))
                        .forEach((name, found) -> byName.merge(
                                name,
                                found,
                                (a, b) -> Stream.concat(a.stream(), b.stream()).toList()));
            }
        }
        assertThat(byName).hasSizeGreaterThan(700);
        byName.values().removeIf(found -> found.size() == 1);
        assertThat(byName).isEmpty();
    }

    private static boolean isClass(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(".java")
                && !name.endsWith("-info.java")
                && file.toString().contains(MAIN.toString());
    }
}
