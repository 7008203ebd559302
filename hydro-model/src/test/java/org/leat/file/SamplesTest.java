package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.design.Design;
import org.leat.design.Sample;

/** Lines that messages and the schema show as the way to write something can be written so. */
class SamplesTest {

    private static void reach(ValueType type, Set<Class<?>> types) {
        if (type instanceof ValueType.OfList list) {
            reach(list.item(), types);
        } else if (type instanceof ValueType.OfNames names) {
            reach(names.value(), types);
        } else if (type instanceof ValueType.OfRecord record && types.add(record.type())) {
            Shape.of(record.type()).fields().forEach(field -> reach(field.type(), types));
        } else if (type instanceof ValueType.OfChoice choice && types.add(choice.type())) {
            choice.kinds().values().forEach(kind -> reach(new ValueType.OfRecord(kind), types));
        }
    }

    static Stream<Class<?>> sampled() {
        Set<Class<?>> types = new HashSet<>();
        reach(ValueType.of(Design.class), types);
        return types.stream().filter(t -> t.isAnnotationPresent(Sample.class));
    }

    @ParameterizedTest
    @MethodSource("sampled")
    void a_sample_can_be_written_as_it_stands(Class<?> type) {
        String sample = Objects.requireNonNull(type.getAnnotation(Sample.class)).value();
        Problems problems = new Problems();
        Node node = Objects.requireNonNull(
                NodeReader.read(sample, "sample", problems).root());
        Object bound = new Binder(problems, Parts.none(problems), false).bind(ValueType.of(type), node, "/");
        assertThat(problems.sorted()).extracting(ProblemText::line).isEmpty();
        assertThat(bound).isInstanceOf(type);
    }

    @Test
    void each_outermost_part_that_a_design_must_have_shows_one() {
        Set<String> without = Shape.of(Design.class).fields().stream()
                .filter(Shape.Field::required)
                .filter(field -> field.type() instanceof ValueType.OfRecord record
                        && !record.type().isAnnotationPresent(Sample.class))
                .map(Shape.Field::key)
                .collect(Collectors.toSet());
        assertThat(without).isEmpty();
        assertThat(sampled().count()).isGreaterThan(20);
    }

    @Test
    void the_examples_of_the_schema_fit_it() throws IOException {
        JsonNode schema = new ObjectMapper().readTree(DesignSchema.json());
        Map<String, JsonNode> examples = new HashMap<>();
        schema.get("$defs").fields().forEachRemaining(def -> {
            if (def.getValue().has("examples")) {
                examples.put(def.getKey(), def.getValue().get("examples").get(0));
            }
        });
        assertThat(examples).hasSizeGreaterThan(20);
        examples.forEach((name, example) -> {
            JsonNode only = new ObjectMapper()
                    .createObjectNode()
                    .put("$ref", "#/$defs/" + name)
                    .set("$defs", schema.get("$defs"));
            Schema one = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(only);
            assertThat(one.validate(example.toString(), InputFormat.JSON))
                    .as(name)
                    .isEmpty();
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    penstock: { length: 90 m }        | penstock/length | length in each item of sections: a length
                    penstock: { bends: 3 }            | penstock/bends  | fittings in each item of sections: a list, such as [{ kind: bend-45, count: 3 }]
                    gross-head: 24 m                  | gross-head      | gross-head in site: a length
                    head: 24 m                        | head            | gross-head in site: a length
                    """)
    void a_field_that_stands_too_far_out_is_told_where_it_belongs(String text, String path, String words) {
        Reading reading = DesignReader.read("format: 1\n" + text + "\n", "f");
        assertThat(reading.problems())
                .filteredOn(p -> p.path().equals("/" + path))
                .singleElement()
                .satisfies(p -> {
                    assertThat(p.kind()).isEqualTo(ProblemKind.UNKNOWN_FIELD);
                    assertThat(ProblemText.of(p)).contains("; write " + words);
                });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    nozzles: 9 mm                             | nozzles                 | { open: [9 mm] }
                    site: { stream: 2.5 L/s }                 | site/stream             | { flow: 2.5 L/s }
                    alternator: { winding: 0.2 Ω }            | alternator/winding      | { resistance-between-leads: 0.2 Ω }
                    regulator: MPPT                           | regulator               | { kind: MPPT }
                    alternator: { open-circuit: 30 rpm/V }    | alternator/open-circuit | { kind: speed-per-volt, speed-per-volt: 30 rpm/V }
                    """)
    void a_value_where_a_mapping_of_it_is_due_is_answered_by_the_mapping(String text, String path, String words) {
        Reading reading = DesignReader.read("format: 1\n" + text + "\n", "f");
        assertThat(reading.problems())
                .filteredOn(p -> p.path().equals("/" + path))
                .singleElement()
                .satisfies(p -> assertThat(p.hint()).isEqualTo(words));
    }

    @Test
    void a_value_that_no_mapping_can_be_made_of_is_answered_by_a_sample() {
        Reading reading = DesignReader.read("format: 1\nbattery: 24 V of lithium\n", "f");
        assertThat(reading.problems())
                .extracting(ProblemText::of)
                .anySatisfy(text -> assertThat(text)
                        .contains(
                                "such as { chemistry: lithium-iron-phosphate, cells-in-series: 8, capacity: 100 Ah }"));
    }
}
