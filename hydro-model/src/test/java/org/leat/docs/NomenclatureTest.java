package org.leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The names of docs/nomenclature.md are those of the code and of the design file. */
class NomenclatureTest {

    private static final String FILE = "org.leat.design";
    private static final List<String> CODE = List.of(
            "org.leat.plant",
            "org.leat.plant.numbers",
            "org.leat.plant.derive",
            "org.leat.plant.loads",
            "org.leat.plant.solve",
            "org.leat.plant.solved",
            "org.leat.plant.duties",
            "org.leat.plant.cases",
            FILE,
            "org.leat.hydraulics",
            "org.leat.turbine",
            "org.leat.electrics");

    /** A row: its name, and where the table says it stands. */
    record Row(String name, String where) {
        /** {@return the name as a member: {@code air-gap power} is {@code airGapPower}} */
        String inJava() {
            StringBuilder out = new StringBuilder();
            for (String word : name.toLowerCase(Locale.ROOT).split("[ -]")) {
                out.append(out.isEmpty() ? word.charAt(0) : Character.toUpperCase(word.charAt(0)))
                        .append(word, 1, word.length());
            }
            return out.toString();
        }
    }

    static List<Row> rows() throws IOException {
        return Files.readAllLines(Sources.ROOT.resolve("docs/nomenclature.md")).stream()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| name |"))
                .map(line -> line.split("\\|", -1))
                .map(cells -> new Row(cells[1].strip(), cells[2].strip()))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void every_name_stands_where_the_table_says(Row row) {
        switch (row.where()) {
            case "file" -> assertThat(components(FILE)).contains(row.inJava());
            case "code" -> assertThat(names()).contains(row.inJava());
            case "symbol only" -> assertThat(names()).doesNotContain(row.inJava());
            default -> throw new AssertionError("file, code or symbol only, not: " + row.where());
        }
    }

    @Test
    void no_name_is_told_twice() throws IOException {
        assertThat(rows()).extracting(Row::name).doesNotHaveDuplicates().hasSizeGreaterThan(30);
    }

    private static Stream<Class<?>> types(List<String> packages) {
        return Sources.types().stream()
                .filter(type -> packages.contains(type.getPackageName()))
                .flatMap(NomenclatureTest::withNested);
    }

    private static Stream<Class<?>> withNested(Class<?> type) {
        return Stream.concat(
                Stream.of(type), Arrays.stream(type.getDeclaredClasses()).flatMap(NomenclatureTest::withNested));
    }

    private static Set<String> components(String name) {
        Set<String> out = new HashSet<>();
        types(List.of(name))
                .filter(Class::isRecord)
                .forEach(type -> Arrays.stream(type.getRecordComponents())
                        .map(RecordComponent::getName)
                        .forEach(out::add));
        return out;
    }

    /** Record components, methods and classes: a law's class is named for what it gives. */
    private static Set<String> names() {
        Set<String> out = new HashSet<>();
        CODE.forEach(each -> out.addAll(components(each)));
        types(CODE).forEach(type -> {
            String simple = type.getSimpleName();
            out.add(simple.isEmpty() ? simple : Character.toLowerCase(simple.charAt(0)) + simple.substring(1));
            Arrays.stream(type.getDeclaredMethods())
                    .filter(method -> !method.isSynthetic())
                    .map(Method::getName)
                    .forEach(out::add);
        });
        return out;
    }
}
