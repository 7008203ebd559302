package org.leat.file;

import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** A value of whatever shape, as it stands in a file, whose meaning only the field knows that it is for. Immutable. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class AnyValue {

    private final Node node;

    AnyValue(Node node) {
        this.node = node;
    }

    /**
     * What came of taking it for the value of a field.
     *
     * @param value what the field would hold; null exactly if there are problems
     * @param problems why it cannot hold it, each where it stands in the value's own file
     */
    public record Taken(@Nullable Object value, List<Problem> problems) {

        public Taken {
            problems = List.copyOf(problems);
        }
    }

    /**
     * {@return this as what a field of a record holds}
     *
     * @param record class of it
     * @param field as files spell it
     * @param item whether it is one item of the list that the field holds
     * @param path of the value in its own file
     * @throws IllegalArgumentException if the record has no such field, or no list there
     */
    public Taken as(Class<? extends Record> record, String field, boolean item, String path) {
        Shape.Field known = Shape.of(record).byKey().get(field);
        if (known == null || (item && !(known.type() instanceof ValueType.OfList))) {
            throw new IllegalArgumentException("no such field: " + field);
        }
        Problems problems = new Problems();
        ValueType type = item && known.type() instanceof ValueType.OfList list ? list.item() : known.type();
        Object bound = new Binder(problems, Parts.none(problems), false).bind(type, node, path, known.around());
        return problems.none() ? new Taken(bound, List.of()) : new Taken(null, problems.sorted());
    }

    /** {@return the fields of a record as files spell them} */
    public static List<String> fields(Class<? extends Record> record) {
        return Shape.of(record).fields().stream().map(Shape.Field::key).toList();
    }

    /** {@return where it stands} */
    public Position position() {
        return node.at();
    }
}
