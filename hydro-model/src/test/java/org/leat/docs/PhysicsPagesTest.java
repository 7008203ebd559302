package org.leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pages under docs/physics name the classes that are there, all of the laws, and data files that exist. */
class PhysicsPagesTest {

    private static final Path PAGES = Sources.ROOT.resolve("docs/physics");
    private static final Path PUBLISHED = Sources.ROOT.resolve("hydro-model/src/test/resources/published");
    private static final List<String> OF_LAWS =
            List.of("org.leat.hydraulics", "org.leat.turbine", "org.leat.electrics");
    private static final String GENERATED = "published-values.md";
    private static final Pattern CLASS = Pattern.compile("`([A-Z][A-Za-z0-9]*)`");
    private static final Pattern DATA = Pattern.compile("`((?:hydraulics|electrical)-[a-z-]+|season)`");

    static List<Path> pages() throws IOException {
        try (Stream<Path> files = Files.list(PAGES)) {
            return files.filter(p -> p.toString().endsWith(".md")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void every_class_named_as_such_exists(Path page) throws IOException {
        Set<String> there = Sources.types().stream().map(Class::getSimpleName).collect(Collectors.toSet());
        assertThat(namedAsClass(page)).as("classes named on %s", page).isSubsetOf(there);
    }

    @Test
    void every_public_class_of_the_laws_is_named_on_a_page() throws IOException {
        Set<String> named = new TreeSet<>();
        for (Path page : pages()) {
            named.addAll(namedAsClass(page));
        }
        List<String> laws = Sources.types().stream()
                .filter(type -> OF_LAWS.contains(type.getPackageName()) && Modifier.isPublic(type.getModifiers()))
                .map(Class::getSimpleName)
                .sorted()
                .toList();
        assertThat(laws).hasSizeGreaterThan(100);
        assertThat(named)
                .as("a public law stands in a Class line or Class column of a page under docs/physics")
                .containsAll(laws);
    }

    @ParameterizedTest
    @MethodSource("pages")
    void every_data_file_named_exists(Path page) throws IOException {
        List<String> named = found(DATA, Files.readString(page));
        assertThat(named)
                .allSatisfy(
                        name -> assertThat(PUBLISHED.resolve(name + ".json")).exists());
    }

    @Test
    void every_file_of_published_values_is_named_beside_a_law() throws IOException {
        Set<String> named = new TreeSet<>();
        for (Path page : pages()) {
            named.addAll(page.endsWith(GENERATED) ? List.of() : found(DATA, Files.readString(page)));
        }
        try (Stream<Path> files = Files.list(PUBLISHED)) {
            assertThat(files.map(p -> p.getFileName().toString().replace(".json", "")))
                    .isSubsetOf(named);
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void every_page_is_listed_and_short(Path page) throws IOException {
        assertThat(Files.readAllLines(page)).hasSizeLessThanOrEqualTo(page.endsWith(GENERATED) ? 500 : 250);
        String name = page.getFileName().toString();
        assertThat(Files.readString(PAGES.resolve("README.md"))).contains(name.equals("README.md") ? "# " : name);
    }

    /** Names in a line that begins with "Class:", after "Class:" in a line, and in the first column under a "Class" head. */
    private static List<String> namedAsClass(Path page) throws IOException {
        StringBuilder places = new StringBuilder();
        boolean column = false;
        for (String line : Files.readAllLines(page)) {
            column = line.startsWith("| Class |") || (column && line.startsWith("|"));
            int mark = line.indexOf("Class: ");
            places.append(column ? line.split("\\|", -1)[1] : mark < 0 ? "" : line.substring(mark))
                    .append('\n');
        }
        return found(CLASS, places.toString());
    }

    private static List<String> found(Pattern pattern, String text) {
        return pattern.matcher(text)
                .results()
                .map((MatchResult m) -> m.group(1))
                .toList();
    }
}
