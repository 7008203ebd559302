package org.leat.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leat.design.ElementPath;
import org.leat.design.ImpossibleValueException;
import org.leat.design.Texts;

/** Binds nodes to records, noting where each value stands and everything that is wrong. */
final class Binder {

    /** Values bound at most: parts can be taken many times, a file cannot hold more. */
    private static final int MOST_VALUES = 200_000;

    private final Problems problems;
    private final Parts parts;
    private final boolean broken;
    private final Scalars scalars;
    private final Refusals faults;
    private final Map<String, Position> positions = new LinkedHashMap<>();
    private int values;

    /** @param broken whether the nodes end early, so that nothing can be said to be missing */
    Binder(Problems problems, Parts parts, boolean broken) {
        this.problems = problems;
        this.parts = parts;
        this.broken = broken;
        this.scalars = new Scalars(problems);
        this.faults = new Refusals(problems, positions, broken);
    }

    /** In place of a value that could not be bound; of a list, the items that could. */
    record Failed(List<@Nullable Object> items) {
        static final Failed ONE = new Failed(List.of());
    }

    Map<String, Position> positions() {
        return positions;
    }

    /** {@return the bound value, or {@link Failed} after a problem} */
    Object bind(ValueType type, Node node, String path) {
        return bind(type, node, path, null);
    }

    /** @param around what may stand around a plain number in this field; null for nothing */
    Object bind(ValueType type, Node node, String path, @Nullable String around) {
        positions.put(path, node.at());
        if (++values > MOST_VALUES) {
            if (values == MOST_VALUES + 1) {
                problems.add(ProblemKind.TOO_MANY_VALUES, node.at(), path, "", "at most " + MOST_VALUES + " values");
            }
            return Failed.ONE;
        }
        if (type instanceof ValueType.OfAny) {
            return node instanceof Node.Scalar scalar && scalar.isNull()
                    ? wrongShape(type, node, path)
                    : new AnyValue(node);
        }
        if (type instanceof ValueType.OfList list) {
            return node instanceof Node.Items items
                    ? list(list, items, path)
                    : single(list.item(), node) ? one(list, node, path) : wrongShape(type, node, path);
        }
        if (type instanceof ValueType.OfNames names) {
            return node instanceof Node.Fields map ? names(names, map, path) : wrongShape(type, node, path);
        }
        if (type instanceof ValueType.OfRecord record) {
            return node instanceof Node.Fields map
                    ? record(Shape.of(record.type()), map, path, false)
                    : wrongShape(type, node, path);
        }
        if (type instanceof ValueType.OfChoice choice) {
            return choice(choice, node, path);
        }
        return node instanceof Node.Scalar scalar
                ? scalars.bind(type, scalar, path, around)
                : wrongShape(type, node, path);
    }

    /** Whether a value that is no list can only be meant as the one item of one. */
    private static boolean single(ValueType item, Node node) {
        boolean mapping = item instanceof ValueType.OfRecord || item instanceof ValueType.OfChoice;
        return mapping ? node instanceof Node.Fields : node instanceof Node.Scalar s && !s.isNull();
    }

    private Object one(ValueType.OfList type, Node node, String path) {
        String list = node instanceof Node.Scalar scalar ? Correction.list(type.item(), scalar.text()) : "";
        if (!list.isEmpty()) {
            problems.add(ProblemKind.WRONG_SHAPE, node.at(), path, shown(node), type.label(), list, List.of());
            return Failed.ONE;
        }
        return list(type, new Node.Items(List.of(node), node.at()), path);
    }

    private Object wrongShape(ValueType type, Node node, String path) {
        if (node instanceof Node.Scalar s && s.isNull()) {
            if (!broken) {
                problems.add(ProblemKind.NO_VALUE, node.at(), path, "", type.label());
            }
        } else {
            String cure = Correction.shape(type, node);
            problems.add(
                    ProblemKind.WRONG_SHAPE,
                    node.at(),
                    path,
                    shown(node),
                    cure.isEmpty() ? type.label() : ValueType.withoutSample(type.label()),
                    cure,
                    List.of());
        }
        return Failed.ONE;
    }

    static String shown(Node node) {
        return node instanceof Node.Scalar s ? s.text() : node instanceof Node.Items ? "a list" : "a mapping";
    }

    private Object list(ValueType.OfList type, Node.Items node, String path) {
        if (node.items().size() > type.most()) {
            problems.add(
                    ProblemKind.TOO_MANY_VALUES,
                    node.at(),
                    path,
                    node.items().size() + " items",
                    "at most " + type.most() + " items");
            return Failed.ONE;
        }
        List<@Nullable Object> bound = new ArrayList<>(node.items().size());
        Set<String> names = new HashSet<>();
        boolean named = type.item() instanceof ValueType.OfRecord record
                && Shape.of(record.type()).byKey().containsKey("name");
        boolean failed = false;
        for (int i = 0; i < node.items().size(); i++) {
            Node item = node.items().get(i);
            if (i + 1 < node.items().size()
                    && Commas.inList(
                            type.item(), item, node.items().get(i + 1), ElementPath.named(path, null, i), problems)) {
                failed = true;
                bound.add(null);
                bound.add(null);
                i++;
                continue;
            }
            String name = named ? name(item) : null;
            if (name != null && !names.add(name)) {
                name = null;
            }
            Object value = bind(type.item(), item, ElementPath.named(path, name, i));
            failed |= value instanceof Failed;
            bound.add(value instanceof Failed ? null : value);
        }
        return failed ? new Failed(bound) : bound;
    }

    private Object names(ValueType.OfNames type, Node.Fields map, String path) {
        Map<String, Object> bound = new LinkedHashMap<>();
        boolean failed = false;
        for (Map.Entry<String, Node> field : map.fields().entrySet()) {
            String item = ElementPath.named(path, field.getKey(), 0);
            // where the name itself stands, by the path with a slash behind it
            positions.put(item + "/", map.keys().getOrDefault(field.getKey(), map.at()));
            Object value = bind(type.value(), field.getValue(), item);
            failed |= value instanceof Failed;
            bound.put(field.getKey(), value);
        }
        return failed ? Failed.ONE : bound;
    }

    private @Nullable String name(Node item) {
        return item instanceof Node.Fields map
                        && parts.field(map, "name") instanceof Node.Scalar name
                        && name.text().length() <= Texts.LONGEST_NAME
                ? name.text()
                : null;
    }

    private Object choice(ValueType.OfChoice choice, Node node, String path) {
        if (choice.plain() != null && node instanceof Node.Scalar scalar && !scalar.isNull()) {
            Shape plain = Shape.of(choice.plain());
            Object value = scalars.bind(plain.fields().get(0).type(), scalar, path, null);
            return value instanceof Failed ? value : make(plain, new Object[] {value}, path, true);
        }
        if (!(node instanceof Node.Fields given)) {
            return wrongShape(choice, node, path);
        }
        Parts.Expanded expanded = parts.expanded(given, path);
        Node.Fields map = expanded.map();
        Node kind = map.fields().get("kind");
        List<String> kinds = List.copyOf(choice.kinds().keySet());
        String kindPath = ElementPath.field(path, "kind");
        if (kind == null) {
            if (!broken && expanded.whole()) {
                String expected = "the kind";
                problems.add(ProblemKind.MISSING_FIELD, map.at(), kindPath, "", expected, "", kinds);
            }
            return Failed.ONE;
        }
        positions.put(kindPath, kind.at());
        String word = shown(kind);
        Class<?> type = choice.kinds().get(word);
        if (type == null && kind instanceof Node.Scalar) {
            type = WaysWritten.meant(choice.ways(), word);
        }
        if (type == null) {
            String nearest = Names.nearest(word, kinds);
            problems.add(ProblemKind.UNKNOWN_WORD, kind.at(), kindPath, word, "the kind", nearest, kinds);
            type = choice.kinds().get(nearest);
            if (type != null) {
                record(Shape.of(type), map, path, true, expanded.whole()); // for the problems in it
            }
            return Failed.ONE;
        }
        return record(Shape.of(type), map, path, true, expanded.whole());
    }

    private Object record(Shape shape, Node.Fields given, String path, boolean hasKind) {
        Parts.Expanded expanded = parts.expanded(given, path);
        return record(shape, expanded.map(), path, hasKind, expanded.whole());
    }

    private Object record(Shape shape, Node.Fields map, String path, boolean hasKind, boolean whole) {
        Map<String, Node> meant = new HashMap<>();
        Set<String> spoilt = Commas.inFields(shape, map, path, problems);
        map.fields().forEach((key, value) -> {
            if (!spoilt.contains(key) && !shape.byKey().containsKey(key) && !(hasKind && key.equals("kind"))) {
                meant.put(unknown(shape, map, key, path, hasKind), value);
            }
        });
        @Nullable Object[] bound = new Object[shape.fields().size()];
        boolean complete = whole && !broken;
        for (Shape.Field field : shape.fields()) {
            Node node = map.fields().get(field.key());
            if (node != null && spoilt.contains(field.key())) {
                complete = false;
            } else if (node != null) {
                Object value = bind(field.type(), node, ElementPath.field(path, field.key()), field.around());
                bound[field.index()] = value;
                complete &= !(value instanceof Failed);
            } else if (field.type() instanceof ValueType.OfList && !field.required()) {
                bound[field.index()] = field.canBeAbsent() ? null : List.of();
            } else if (field.type() instanceof ValueType.OfNames) {
                bound[field.index()] = Map.of();
            } else if (field.required()) {
                complete = false;
                Node misspelt = meant.get(field.key());
                if (misspelt != null) {
                    bind(field.type(), misspelt, ElementPath.field(path, field.key())); // for the problems in it
                } else if (whole && !broken) {
                    missing(field, map, path);
                }
            }
        }
        if (complete) {
            return make(shape, bound, path, false);
        }
        faults.ofLimits(shape, bound, path, false);
        return Failed.ONE;
    }

    /** {@return the known field that was probably meant, or empty} */
    private String unknown(Shape shape, Node.Fields map, String key, String path, boolean hasKind) {
        List<String> known = new ArrayList<>(shape.byKey().keySet());
        if (hasKind) {
            known.add(0, "kind");
        }
        Position at = map.keys().getOrDefault(key, map.at());
        if (problems.full()) {
            problems.add(ProblemKind.UNKNOWN_FIELD, at, path, key, "");
            return "";
        }
        String meant = FieldSlips.meant(key, known);
        String nearest = meant.isEmpty() ? Names.nearest(key, known) : meant;
        String cure = FieldSlips.cure(shape.type(), key, map.fields().get(key));
        String within = meant.isEmpty() && cure.isEmpty() ? FieldSlips.within(shape, key) : "";
        if (!within.isEmpty()) {
            problems.add(ProblemKind.UNKNOWN_FIELD, at, ElementPath.field(path, key), key, within, "", List.of());
            return "";
        }
        problems.add(ProblemKind.UNKNOWN_FIELD, at, ElementPath.field(path, key), key, cure, nearest, known);
        return FieldSlips.other(key, nearest) ? "" : nearest;
    }

    private void missing(Shape.Field field, Node.Fields map, String path) {
        String fieldPath = ElementPath.field(path, field.key());
        boolean format = fieldPath.equals("/format");
        problems.add(
                format ? ProblemKind.MISSING_FORMAT : ProblemKind.MISSING_FIELD,
                map.at(),
                fieldPath,
                "",
                format ? "format: " + DesignReader.FORMAT : field.type().label(),
                field.about(),
                List.of());
    }

    private Object make(Shape shape, @Nullable Object[] bound, String path, boolean plain) {
        try {
            return shape.make(bound);
        } catch (ImpossibleValueException e) {
            faults.ofConstructor(shape, bound, e.faults(), path, plain);
            return Failed.ONE;
        }
    }
}
