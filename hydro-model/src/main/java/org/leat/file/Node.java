package org.leat.file;

import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.Tag;

/** A file's content before it is bound to a design, with the position of everything. */
sealed interface Node {

    Position at();

    /**
     * A plain value.
     *
     * @param text as the parser unescaped it
     * @param tag what YAML's core schema takes it for
     * @param inline whether it stands on its lines alone, so that replacing its range replaces the value
     */
    record Scalar(String text, Tag tag, boolean inline, Position at) implements Node {

        /** {@return whether nothing stands here, or {@code null}} */
        boolean isNull() {
            return tag.equals(Tag.NULL);
        }
    }

    /** A list. */
    record Items(List<Node> items, Position at) implements Node {}

    /**
     * A mapping.
     *
     * @param keys where each field's name stands
     */
    record Fields(Map<String, Node> fields, Map<String, Position> keys, Position at) implements Node {}
}
