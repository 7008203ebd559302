package org.leat.check.testing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.StreamDataWriter;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** YAML as nodes, so that a value stays as it was typed and its place is known. */
final class Yaml {

    private static final LoadSettings LOAD = LoadSettings.builder().build();
    private static final DumpSettings DUMP = DumpSettings.builder()
            .setIndent(2)
            .setIndicatorIndent(2)
            .setIndentWithIndicator(true)
            .setWidth(Integer.MAX_VALUE)
            .setSplitLines(false)
            .build();

    private Yaml() {}

    /**
     * {@return the content of a file}
     *
     * @throws IllegalArgumentException if it is not YAML or holds nothing
     */
    static Node read(String text, String file) {
        try {
            return new Composer(LOAD, new ParserImpl(LOAD, new StreamReader(LOAD, text)))
                    .getSingleNode()
                    .orElseThrow(() -> new IllegalArgumentException(file + " holds nothing"));
        } catch (MarkedYamlEngineException e) {
            throw new IllegalArgumentException(file + place(e.getProblemMark()) + ": " + e.getProblem(), e);
        }
    }

    /** {@return nodes as text} */
    static String write(Node node) {
        StringBuilder out = new StringBuilder();
        new Dump(DUMP).dumpNode(node, new StreamDataWriter() {
            @Override
            public void write(String text) {
                out.append(text);
            }

            @Override
            public void write(String text, int from, int length) {
                out.append(text, from, from + length);
            }
        });
        return out.toString();
    }

    /** {@return the place of a node: {@code file:line:column}} */
    static String at(String file, Node node) {
        return file + place(node.getStartMark());
    }

    /** {@return the line of a node, from zero} */
    static int line(Node node) {
        return node.getStartMark().orElseThrow().getLine(); // marks are on by default
    }

    private static String place(Optional<Mark> mark) {
        return mark.map(m -> ":" + (m.getLine() + 1) + ":" + (m.getColumn() + 1))
                .orElse("");
    }

    /**
     * {@return the fields of a mapping, in their order}
     *
     * @throws IllegalArgumentException if it is none, or has a field twice
     */
    static Map<String, Node> fields(Node node, String file) {
        if (!(node instanceof MappingNode map)) {
            throw new IllegalArgumentException(at(file, node) + ": fields are expected here");
        }
        Map<String, Node> fields = new LinkedHashMap<>();
        for (NodeTuple tuple : map.getValue()) {
            String key = text(tuple.getKeyNode());
            if (fields.put(key, tuple.getValueNode()) != null) {
                throw new IllegalArgumentException(at(file, tuple.getKeyNode()) + ": " + key + " is given twice");
            }
        }
        return fields;
    }

    /**
     * {@return the items of a list}
     *
     * @throws IllegalArgumentException if it is none
     */
    static List<Node> items(Node node, String file) {
        if (!(node instanceof SequenceNode list)) {
            throw new IllegalArgumentException(at(file, node) + ": a list is expected here");
        }
        return list.getValue();
    }

    /** {@return whether nothing stands there, or {@code null}} */
    static boolean isNull(Node node) {
        return node.getTag().equals(Tag.NULL);
    }

    /** {@return a value in one line, the same for the same value however it is laid out} */
    static String text(Node node) {
        if (node instanceof ScalarNode scalar) {
            return scalar.getValue();
        }
        List<String> parts = new ArrayList<>();
        if (node instanceof SequenceNode list) {
            list.getValue().forEach(item -> parts.add(text(item)));
            return "[" + String.join(", ", parts) + "]";
        }
        for (NodeTuple tuple : ((MappingNode) node).getValue()) {
            parts.add(text(tuple.getKeyNode()) + ": " + text(tuple.getValueNode()));
        }
        return "{" + String.join(", ", parts) + "}";
    }
}
