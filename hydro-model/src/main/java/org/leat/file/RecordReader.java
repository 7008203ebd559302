package org.leat.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.ElementPath;
import org.leat.design.Texts;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * Reads files of other formats than a design's, YAML 1.2 or JSON, into a record made of the same kinds of parts:
 * texts, numbers, quantities, words, days, lists, mappings by name, further records. Bad content never throws; memory and
 * time are bounded whatever the file holds.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class RecordReader {

    private RecordReader() {}

    /**
     * {@return what a file says}
     *
     * @param name to be shown as the file's name
     */
    public static <R extends Record> Filled<R> read(Class<R> type, Path file, String name) {
        String shown = Texts.writable(name);
        Problems problems = new Problems();
        try {
            if (!Files.isRegularFile(file)) {
                return unreadable(shown, Files.exists(file) ? "an ordinary file" : "a file that exists", problems);
            }
            return read(type, SourceText.decode(Bytes.read(file), shown, problems), shown, problems);
        } catch (IOException | SecurityException e) {
            return unreadable(shown, "a file that may be read", problems);
        }
    }

    /**
     * {@return what a stream says} It is read to its end or to the largest size of a file, and stays open.
     *
     * @param name to be shown as the file's name
     * @throws IOException if the stream cannot be read
     */
    public static <R extends Record> Filled<R> read(Class<R> type, InputStream in, String name) throws IOException {
        String shown = Texts.writable(name);
        Problems problems = new Problems();
        return read(type, SourceText.decode(in.readNBytes(SourceText.LIMIT + 1), shown, problems), shown, problems);
    }

    /**
     * {@return what a table says: comma-separated values, or values parted by semicolons or tabs, the fields' names in the first line,
     * a unit in brackets behind them} The record has a {@code format}, which is one, and a list that takes the rows.
     *
     * @param list the field that takes the rows
     * @param name to be shown as the file's name
     */
    public static <R extends Record> Filled<R> readTable(Class<R> type, String list, Path file, String name) {
        String shown = Texts.writable(name);
        Problems problems = new Problems();
        try {
            if (!Files.isRegularFile(file)) {
                return unreadable(shown, Files.exists(file) ? "an ordinary file" : "a file that exists", problems);
            }
            String text = SourceText.decode(Bytes.read(file), shown, problems);
            Node rows = text == null ? null : TableNodes.read(text, shown, list, problems);
            return text == null || rows == null
                    ? new Filled<>(null, problems.sorted(), Positions.unknown(shown))
                    : bind(type, rows, false, shown, text, problems);
        } catch (IOException | SecurityException e) {
            return unreadable(shown, "a file that may be read", problems);
        }
    }

    /**
     * {@return what a text says}
     *
     * @param name to be shown as the file's name
     */
    public static <R extends Record> Filled<R> read(Class<R> type, String text, String name) {
        String shown = Texts.writable(name);
        Problems problems = new Problems();
        return read(type, SourceText.check(text, shown, problems), shown, problems);
    }

    /**
     * {@return what a content says that stands in no file, judged as if it did}
     *
     * @param content fields by name: texts, whole numbers, lists and mappings of them
     * @param name to be shown as the file's name
     * @throws IllegalArgumentException if it holds anything else
     */
    public static <R extends Record> Filled<R> read(Class<R> type, Map<String, ?> content, String name) {
        Problems problems = new Problems();
        return bind(type, node(content, Position.startOf(name)), false, name, "", problems);
    }

    private static Node node(Object value, Position at) {
        if (value instanceof Map<?, ?> map) {
            Map<String, Node> fields = new LinkedHashMap<>();
            map.forEach((key, item) -> fields.put((String) key, node(item, at)));
            return new Node.Fields(fields, Map.of(), at);
        }
        if (value instanceof List<?> list) {
            return new Node.Items(list.stream().map(item -> node(item, at)).toList(), at);
        }
        if (value instanceof Integer) {
            return new Node.Scalar(value.toString(), Tag.INT, false, at);
        }
        if (value instanceof String text) {
            return new Node.Scalar(text, Tag.STR, false, at);
        }
        throw new IllegalArgumentException("no file can hold " + value.getClass());
    }

    /** {@return the JSON Schema (2020-12) of such files, as JSON text} */
    public static String schema(String title, Class<? extends Record> type) {
        return DesignSchema.json(title, type);
    }

    private static <R extends Record> Filled<R> read(
            Class<R> type, @Nullable String text, String name, Problems problems) {
        if (text == null) {
            return new Filled<>(null, problems.sorted(), Positions.unknown(name));
        }
        NodeReader.Result nodes = NodeReader.read(text, name, problems);
        Node root = nodes.root();
        if (root == null) {
            return new Filled<>(null, problems.sorted(), new Positions(name, Map.of()));
        }
        return bind(type, root, nodes.broken(), name, text, problems);
    }

    private static <R extends Record> Filled<R> bind(
            Class<R> type, Node root, boolean broken, String name, String text, Problems problems) {
        if (DesignReader.newer(root, problems)) {
            return new Filled<>(null, problems.sorted(), new Positions(name, Map.of()));
        }
        Binder binder = new Binder(problems, Parts.none(problems), broken);
        Object bound = binder.bind(new ValueType.OfRecord(type), root, ElementPath.ROOT);
        R record = problems.none() && type.isInstance(bound) ? type.cast(bound) : null;
        return new Filled<>(record, problems.sorted(), new Positions(name, binder.positions(), text));
    }

    private static <R extends Record> Filled<R> unreadable(String name, String expected, Problems problems) {
        problems.add(ProblemKind.UNREADABLE, Position.startOf(name), ElementPath.ROOT, "", expected);
        return new Filled<>(null, problems.sorted(), Positions.unknown(name));
    }
}
