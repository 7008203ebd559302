package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.design.About;
import org.leat.design.CanBeAbsent;
import org.leat.design.Limits;
import org.leat.quantity.QuantityKind;

/** What is said of each field of a design is said once, and seen wherever the field is. */
class FieldsTest {

    private static final Path SOURCES = Path.of("src/main/java/org/leat/design");

    static Stream<Shape> shapes() {
        return AllShapes.list().stream();
    }

    @Test
    void there_are_records_to_look_at() {
        assertThat(AllShapes.list()).hasSizeGreaterThan(60);
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void every_field_says_what_it_is_without_a_full_stop(Shape shape) {
        for (Shape.Field field : shape.fields()) {
            assertThat(field.about()).as(shape.type() + " " + field.key()).isNotBlank();
            assertThat(field.about()).as(shape.type() + " " + field.key()).doesNotEndWith(".");
        }
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void what_may_be_null_can_be_absent_and_nothing_else_can(Shape shape) {
        for (RecordComponent component : shape.type().getRecordComponents()) {
            boolean nullable = component.getAnnotatedType().isAnnotationPresent(Nullable.class);
            assertThat(component.isAnnotationPresent(CanBeAbsent.class))
                    .as(component.toString())
                    .isEqualTo(nullable);
            // of devices alone it is told apart whether there are none or nothing is said of them
            assertThat(nullable && List.of(List.class, Map.class).contains(component.getType()))
                    .as(component.toString())
                    .isEqualTo(component.getName().equals("protection") && component.getType() == List.class);
        }
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void setters_of_builders_and_accessors_show_it_too(Shape shape) throws Exception {
        String nested =
                shape.type().getName().substring("org.leat.design.".length()).replace("$", "");
        Class<?> builder = Class.forName("org.leat.design." + nested + "Builder");
        for (RecordComponent component : shape.type().getRecordComponents()) {
            Method setter = builder.getMethod(component.getName(), component.getType());
            About about = component.getAnnotation(About.class);
            Limits limits = component.getAnnotation(Limits.class);
            assertThat(setter.getParameters()[0].getAnnotation(About.class)).isEqualTo(about);
            assertThat(setter.getParameters()[0].getAnnotation(Limits.class)).isEqualTo(limits);
            assertThat(component.getAccessor().getAnnotation(About.class)).isEqualTo(about);
            assertThat(component.getAccessor().getAnnotation(Limits.class)).isEqualTo(limits);
        }
    }

    @Test
    void no_comment_says_it_again() throws IOException {
        List<String> names = AllShapes.list().stream()
                .flatMap(shape -> Arrays.stream(shape.type().getRecordComponents()))
                .map(RecordComponent::getName)
                .distinct()
                .toList();
        Pattern param = Pattern.compile("@param (" + String.join("|", names) + ") [^;{]*?\\*/[^;{]*?\\brecord ");
        try (Stream<Path> files = Files.list(SOURCES)) {
            for (Path file : files.toList()) {
                if (!file.endsWith("ImpossibleValueException.java")) { // its record is no part of a design
                    assertThat(Files.readString(file)).as(file.toString()).doesNotContainPattern(param);
                }
            }
        }
    }

    @Test
    void limits_name_the_si_unit_of_every_kind() throws IOException {
        String words = Files.readString(SOURCES.resolve("Limits.java")).replaceAll("\\s*\\n \\*\\s*", " ");
        for (QuantityKind kind : QuantityKind.values()) {
            assertThat(words).contains("{@code " + kind.type().getSimpleName() + "} " + kind.siSymbol());
        }
    }

    /** A record of someone else's. */
    public record HalfMarked(@About("a") @Nullable String a) {}

    @Test
    void a_record_that_says_null_to_compilers_only_is_refused_by_name() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RecordReader.read(HalfMarked.class, "a: x\n", "f"))
                .withMessageContaining("HalfMarked.a is @Nullable, but not @CanBeAbsent");
    }
}
