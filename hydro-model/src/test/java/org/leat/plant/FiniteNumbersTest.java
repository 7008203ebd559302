package org.leat.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.plant.numbers.Amount;

/** Whatever a plant, its numbers and its solved cases tell without being asked for more is a number that can be printed. */
class FiniteNumbersTest {

    private static final Path DEMOS = Path.of("../hydro-examples/designs");

    /** The plants that the rules' examples stand on; some of them tell very little. */
    private static final Path BASES = Path.of("../hydro-rules/src/main/resources/org/leat/pack/bases");

    private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<String> wrong = new TreeSet<>();
    private int numbers;

    private void walk(Object value, String where) throws ReflectiveOperationException {
        if (value instanceof Double number) {
            numbers++;
            if (!Double.isFinite(number) || Math.abs(number) == Double.MAX_VALUE) {
                wrong.add(where + " is " + number);
            }
        } else if (value instanceof OptionalDouble number) {
            if (number.isPresent()) {
                walk(number.getAsDouble(), where);
            }
        } else if (value instanceof Optional<?> one) {
            if (one.isPresent()) {
                walk(one.get(), where);
            }
        } else if (value instanceof Iterable<?> all && !(value instanceof Path)) {
            for (Object one : all) {
                walk(one, where);
            }
        } else if (value instanceof Map<?, ?> map) {
            walk(map.values(), where);
        } else if (value.getClass().getName().startsWith("org.leat.plant.")
                && !(value instanceof Amount.OutsideRange) // an open end of a law's range is infinite
                && !(value instanceof Enum)
                && seen.add(value)) {
            for (Method method : told(value.getClass())) {
                method.setAccessible(true);
                Object told = method.invoke(value);
                if (told != null) {
                    walk(told, value.getClass().getSimpleName() + "." + method.getName());
                }
            }
        }
    }

    /** What a record holds; of others, what their interface tells. */
    private static List<Method> told(Class<?> type) {
        if (type.isRecord()) {
            return Stream.of(type.getRecordComponents())
                    .map(RecordComponent::getAccessor)
                    .toList();
        }
        return Stream.of(type.getMethods())
                .filter(method -> method.getParameterCount() == 0
                        && !Modifier.isStatic(method.getModifiers())
                        && method.getDeclaringClass() != Object.class
                        && !List.of("toString", "hashCode").contains(method.getName()))
                .toList();
    }

    @Test
    void every_number_of_a_plant_and_of_its_cases_is_finite() throws Exception {
        try (Stream<Path> demos = Files.list(DEMOS);
                Stream<Path> bases = Files.list(BASES)) {
            for (Path file : Stream.concat(demos, bases)
                    .filter(f -> f.toString().endsWith(".yaml"))
                    .sorted()
                    .toList()) {
                Design design = Objects.requireNonNull(DesignReader.read(file).design(), file.toString());
                Plant plant = Plant.of(design);
                walk(plant.numbers(), "numbers");
                if (plant.unsolvable().isEmpty()) {
                    walk(plant.solve(), "cases");
                }
                seen.clear();
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(numbers).isGreaterThan(5000);
    }
}
