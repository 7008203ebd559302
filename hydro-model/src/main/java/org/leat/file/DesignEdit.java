package org.leat.file;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.function.Function;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.ElementPath;
import org.leat.quantity.Measured;

/**
 * One value of a design file replaced, or one added, everything else kept: comments, layout, line ends.
 *
 * @param position what is replaced, in the unmodified file; of no length where something is added
 * @param text what takes its place, quoted where needed
 */
@API(status = API.Status.INTERNAL, since = "0.1")
public record DesignEdit(Position position, String text) {

    /**
     * {@return the replacement of one value, or null where it cannot be replaced: it stands in no file or in a parts
     * file, is no plain value, or is written as a block of lines}
     *
     * @param reading the file as it was read
     * @param path the value's path
     * @param value a quantity, a measured value, a number, a truth value, a text or a word of the design's enums
     * @throws IllegalArgumentException for a value no file can hold
     */
    public static @Nullable DesignEdit of(Reading reading, String path, Object value) {
        Position at = reading.positions().exactly(path);
        if (at == null || !at.file().equals(reading.source())) {
            return null;
        }
        Node root = NodeReader.read(reading.text(), reading.source(), new Problems())
                .root();
        if (root == null || !plainValueAt(root, at)) {
            return null;
        }
        boolean quotes = reading.text().charAt(index(reading.text(), at.line(), at.column())) == '"';
        return new DesignEdit(at, number(value, YamlText.scalar(DesignTree.plain(value), quotes)));
    }

    /**
     * {@return a field put into a mapping that has it not, behind the mapping's other fields; null where that mapping stands in no
     * file or in a parts file, is empty, or has the field already}
     *
     * @param reading the file as it was read
     * @param parent path of the mapping
     * @param field its name in files
     * @param value a plain value as for {@link #of}, or a record of plain values
     * @throws IllegalArgumentException for a value no file can hold
     */
    public static @Nullable DesignEdit added(Reading reading, String parent, String field, Object value) {
        return added(reading, parent, field, quotes -> inOneLine(value, quotes));
    }

    /** @param value as it is written, where texts stand in quotation marks or where they do not */
    private static @Nullable DesignEdit added(
            Reading reading, String parent, String field, Function<Boolean, String> value) {
        Position at = reading.positions().exactly(parent);
        if (at == null || !at.file().equals(reading.source())) {
            return null;
        }
        Node root = NodeReader.read(reading.text(), reading.source(), new Problems())
                .root();
        Node.Fields map = root == null ? null : mappingAt(root, at);
        if (map == null || map.fields().isEmpty() || map.fields().containsKey(field)) {
            return null;
        }
        String text = reading.text();
        boolean braces = text.charAt(index(text, at.line(), at.column())) == '{';
        Position last =
                List.copyOf(map.fields().values()).get(map.fields().size() - 1).at();
        Position key = List.copyOf(map.keys().values()).get(0);
        boolean quotes = text.charAt(index(text, key.line(), key.column())) == '"';
        String written = (quotes ? "\"" + field + "\"" : field) + ": " + value.apply(quotes);
        if (braces) {
            return new DesignEdit(
                    new Position(at.file(), last.endLine(), last.endColumn(), last.endLine(), last.endColumn()),
                    ", " + written);
        }
        int indent =
                map.keys().values().stream().mapToInt(Position::column).min().orElse(1) - 1;
        // a block of lines ends where the next line begins
        int line = last.endColumn() == 1 && last.endLine() > last.line() ? last.endLine() - 1 : last.endLine();
        Position end = endOf(at.file(), text, line);
        return new DesignEdit(end, (text.indexOf('\r') >= 0 ? "\r\n" : "\n") + " ".repeat(indent) + written);
    }

    /** {@return the place behind a line's last character} */
    public static Position endOf(String file, String text, int line) {
        int from = index(text, line, 1);
        int to = from;
        while (to < text.length() && text.charAt(to) != '\n' && text.charAt(to) != '\r') {
            to++;
        }
        int column = text.codePointCount(from, to) + 1;
        return new Position(file, line, column, line, column);
    }

    private static String inOneLine(Object value, boolean quotes) {
        if (!(value instanceof Record record) || value instanceof Measured<?>) {
            return number(value, YamlText.scalar(DesignTree.plain(value), quotes));
        }
        StringBuilder out = new StringBuilder("{ ");
        DesignTree.of(record)
                .properties()
                .forEach(f -> out.append(out.length() > 2 ? ", " : "")
                        .append(quotes ? "\"" + f.getKey() + "\"" : f.getKey())
                        .append(": ")
                        .append(YamlText.scalar(f.getValue(), quotes)));
        return out.append(" }").toString();
    }

    /** A whole number is written as people write it. */
    private static String number(Object value, String written) {
        return value instanceof Double && written.endsWith(".0") ? written.replace(".0", "") : written;
    }

    private static Node.@Nullable Fields mappingAt(Node root, Position at) {
        Deque<Node> open = new ArrayDeque<>(List.of(root));
        while (!open.isEmpty()) {
            Node node = open.pop();
            if (node instanceof Node.Fields map) {
                if (map.at().equals(at)) {
                    return map;
                }
                open.addAll(map.fields().values());
            } else if (node instanceof Node.Items list) {
                open.addAll(list.items());
            }
        }
        return null;
    }

    /**
     * {@return what makes a field hold a value of any shape: in place of what stands there, in brackets where it is no plain value;
     * else as a new field of the element that has it; null where that element stands in no file or in a parts file}
     *
     * @param reading the file as it was read
     * @param path the field's path, or that of a list's item that stands in the file
     * @param value as {@link #of} takes it, or a list or a record of such
     * @throws IllegalArgumentException for a value no file can hold
     */
    public static @Nullable DesignEdit setting(Reading reading, String path, Object value) {
        JsonNode tree = DesignTree.any(value);
        Position at = reading.positions().exactly(path);
        if (at == null) {
            int cut = path.lastIndexOf('/');
            return path.endsWith("]")
                    ? null
                    : added(
                            reading,
                            cut == 0 ? ElementPath.ROOT : path.substring(0, cut),
                            path.substring(cut + 1),
                            quotes -> inBrackets(tree, quotes));
        }
        boolean plain = !(value instanceof List<?>) && !(value instanceof Record && !(value instanceof Measured<?>));
        DesignEdit inPlace = plain ? of(reading, path, value) : null;
        if (inPlace != null) {
            return inPlace;
        }
        boolean json = reading.text().stripLeading().startsWith("{");
        return at.file().equals(reading.source()) && !isBlockText(reading, at)
                ? new DesignEdit(at, inBrackets(tree, json))
                : null;
    }

    /** What is valid JSON is valid YAML too. */
    private static String inBrackets(JsonNode tree, boolean quotes) {
        return quotes ? tree.toString() : YamlText.inBrackets(tree);
    }

    /**
     * {@return a value as a design file holds it, on one line}
     *
     * @throws IllegalArgumentException for a value no file can hold
     */
    public static String written(Object value) {
        return YamlText.inBrackets(DesignTree.any(value));
    }

    /** A text in a block of lines ends where the next field begins: what takes its place would run into it. */
    private static boolean isBlockText(Reading reading, Position at) {
        char first = reading.text().charAt(index(reading.text(), at.line(), at.column()));
        return first == '|' || first == '>';
    }

    /**
     * {@return a file's text with the edits made; they must not overlap}
     *
     * @param text the unmodified text, without byte order mark
     */
    public static String apply(String text, List<DesignEdit> edits) {
        List<DesignEdit> fromTheEnd = new ArrayList<>(edits);
        // of several at one place the first comes first
        Collections.reverse(fromTheEnd);
        fromTheEnd.sort(Comparator.comparing(DesignEdit::position).reversed());
        String edited = text;
        for (DesignEdit edit : fromTheEnd) {
            Position at = edit.position();
            edited = edited.substring(0, index(edited, at.line(), at.column()))
                    + edit.text()
                    + edited.substring(index(edited, at.endLine(), at.endColumn()));
        }
        return edited;
    }

    private static boolean plainValueAt(Node root, Position at) {
        Deque<Node> open = new ArrayDeque<>(List.of(root));
        while (!open.isEmpty()) {
            Node node = open.pop();
            if (node instanceof Node.Scalar scalar && scalar.at().equals(at)) {
                return scalar.inline() && !scalar.isNull();
            }
            if (node instanceof Node.Fields map) {
                open.addAll(map.fields().values());
            } else if (node instanceof Node.Items list) {
                open.addAll(list.items());
            }
        }
        return false;
    }

    /** Where a line and a column in code points begin in a text. */
    private static int index(String text, int line, int column) {
        int at = 0;
        for (int l = 1; l < line; l++) {
            while (text.charAt(at) != '\n' && text.charAt(at) != '\r') {
                at++;
            }
            at += text.startsWith("\r\n", at) ? 2 : 1;
        }
        return text.offsetByCodePoints(at, column - 1);
    }
}
