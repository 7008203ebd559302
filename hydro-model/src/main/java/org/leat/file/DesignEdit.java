package org.leat.file;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * One value of a design file replaced, everything else kept: comments, layout, line ends.
 *
 * @param position what is replaced, in the unmodified file
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
        String written = YamlText.scalar(DesignTree.plain(value), quotes);
        // a whole number is written as people write it
        return new DesignEdit(
                at, value instanceof Double && written.endsWith(".0") ? written.replace(".0", "") : written);
    }

    /**
     * {@return a file's text with the edits made; they must not overlap}
     *
     * @param text the unmodified text, without byte order mark
     */
    public static String apply(String text, List<DesignEdit> edits) {
        List<DesignEdit> fromTheEnd = new ArrayList<>(edits);
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
