package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.design.Limits;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.TradeUnits;

/** Every limit of every field, just within and just beyond, through the reader. */
class LimitsTest {

    private static final Set<ProblemKind> KINDS =
            EnumSet.of(ProblemKind.IMPOSSIBLE_VALUE, ProblemKind.TOO_MANY_VALUES, ProblemKind.UNSUPPORTED_FORMAT);

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private record Try(BigDecimal value, boolean within) {
        static Try within(double value) {
            return new Try(new BigDecimal(Double.toString(value)), true);
        }

        static Try beyond(double value) {
            return new Try(new BigDecimal(Double.toString(value)), false);
        }
    }

    static Stream<Arguments> limited() {
        return AllShapes.list().stream()
                .flatMap(shape -> shape.fields().stream()
                        .filter(field -> field.limits() != null)
                        .map(field -> Arguments.of(shape.type(), field.key())));
    }

    @Test
    void there_are_many_limits() {
        assertThat(limited().count()).isGreaterThan(200);
    }

    @ParameterizedTest
    @MethodSource("limited")
    void a_limit_holds_at_its_boundary(Class<? extends Record> type, String key) {
        Shape.Field field = Shape.of(type).byKey().get(key);
        ObjectNode sample = DesignTree.of((Record) AnyDesign.one(type));
        for (Try t : tries(field)) {
            JsonNode one = written(field.type(), t.value());
            JsonNode value = one;
            if (field.type() instanceof ValueType.OfList) {
                ArrayNode list = NODES.arrayNode();
                for (int i = 0; i < Math.max(1, field.limits().items()); i++) {
                    list.add(one);
                }
                value = list;
            }
            held(type, sample, field, value, t.within());
        }
        if (field.type() instanceof ValueType.OfList list) {
            ArrayNode most = NODES.arrayNode();
            JsonNode item = sample.get(key) == null
                    ? NODES.numberNode(0)
                    : sample.get(key).get(0);
            for (int i = 0; i <= list.most(); i++) {
                most.add(item);
            }
            held(type, sample, field, most, false);
        }
        if (field.limits().items() > 0) {
            ArrayNode items = (ArrayNode) sample.get(key);
            while (items.size() > field.limits().items()) {
                items.remove(items.size() - 1);
            }
            held(type, sample, field, items, true);
            ArrayNode fewer = items.deepCopy();
            fewer.remove(0);
            held(type, sample, field, fewer, false);
        }
    }

    private static void held(
            Class<? extends Record> type, ObjectNode sample, Shape.Field field, JsonNode value, boolean within) {
        ObjectNode changed = sample.deepCopy();
        changed.set(field.key(), value);
        List<Problem> problems = RecordReader.read(type, DesignWriter.json(changed), "f").problems().stream()
                .filter(p -> p.path().startsWith("/" + field.key()))
                .filter(p -> p.kind() != ProblemKind.CONTRADICTION)
                .toList();
        String what = type.getSimpleName() + "." + field.key() + ": " + value;
        if (within) {
            assertThat(problems).as(what).isEmpty();
        } else {
            assertThat(problems)
                    .as(what)
                    .isNotEmpty()
                    .allMatch(p -> KINDS.contains(p.kind()))
                    .allMatch(p -> p.position().line() > 1);
        }
    }

    private static List<Try> tries(Shape.Field field) {
        Limits limits = field.limits();
        ValueType type = field.type() instanceof ValueType.OfList list ? list.item() : field.type();
        boolean whole = type == ValueType.Simple.WHOLE;
        Stream.Builder<Try> tries = Stream.builder();
        if (Double.isFinite(limits.atLeast())) {
            tries.add(Try.within(limits.atLeast())).add(Try.beyond(next(limits.atLeast(), -1, whole)));
        }
        if (Double.isFinite(limits.above())) {
            tries.add(Try.within(Math.max(next(limits.above(), 1, whole), 1.000001 * least(type))))
                    .add(Try.beyond(limits.above()));
        }
        if (Double.isFinite(limits.atMost())) {
            tries.add(Try.within(limits.atMost())).add(Try.beyond(next(limits.atMost(), 1, whole)));
        }
        return tries.build().toList();
    }

    /** The least of a kind that is not nothing: beyond it a limit of its own is not met. */
    private static double least(ValueType type) {
        return type instanceof ValueType.OfQuantity quantity
                ? quantity.kind().least()
                : type == ValueType.Simple.NUMBER ? QuantityKind.RATIO.least() : 0;
    }

    private static double next(double limit, int direction, boolean whole) {
        return whole ? limit + direction : limit + direction * 1e-9 * Math.max(1e-6, Math.abs(limit));
    }

    /** A value in the SI unit of its kind. */
    private static JsonNode written(ValueType type, BigDecimal value) {
        if (type instanceof ValueType.OfList list) {
            return written(list.item(), value);
        }
        if (type instanceof ValueType.OfQuantity quantity && quantity.kind() != QuantityKind.RATIO) {
            return NODES.textNode(
                    value + " " + TradeUnits.of(quantity.kind()).get(0).symbol());
        }
        return type == ValueType.Simple.WHOLE ? NODES.numberNode(value.longValueExact()) : NODES.numberNode(value);
    }
}
