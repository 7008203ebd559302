package org.leat.check.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.resolver.CoreScalarResolver;

/** Writes what was found as an expectation. */
final class ExpectationText {

    private ExpectationText() {}

    /** {@return the expectation of an example, with its {@code expect:}, each line indented} */
    static String of(List<Told> found, boolean positions, int indent) {
        List<Node> items = found.stream().map(told -> item(told, positions)).toList();
        MappingNode expect = map(FlowStyle.BLOCK);
        put(expect, ExampleReader.EXPECT, new SequenceNode(Tag.SEQ, items, FlowStyle.BLOCK));
        StringBuilder text = new StringBuilder();
        Yaml.write(expect)
                .lines()
                .forEach(line -> text.append(" ".repeat(indent)).append(line).append('\n'));
        return text.toString();
    }

    private static Node item(Told told, boolean positions) {
        MappingNode facts = map(FlowStyle.FLOW);
        for (String name : Told.FACTS) {
            if (!told.fact(name).isEmpty() && (positions || !name.equals(Told.POSITION))) {
                put(facts, name, scalar(told.fact(name)));
            }
        }
        MappingNode item = map(FlowStyle.BLOCK);
        put(item, told.rule(), facts);
        put(item, "text", scalar(told.text()));
        if (!told.waysOut().isEmpty()) {
            List<Node> ways = told.waysOut().stream().map(ExpectationText::way).toList();
            put(item, "ways-out", new SequenceNode(Tag.SEQ, ways, FlowStyle.BLOCK));
        }
        return item;
    }

    private static Node way(Told.Way way) {
        MappingNode map = map(FlowStyle.BLOCK);
        put(map, "text", scalar(way.text()));
        if (!way.watts().isEmpty()) {
            put(map, "watts", scalar(way.watts()));
        }
        if (!way.edits().isEmpty()) {
            MappingNode edits = map(FlowStyle.FLOW);
            for (Map.Entry<String, String> edit : new TreeMap<>(way.edits()).entrySet()) {
                put(edits, edit.getKey(), asTyped(edit.getValue()));
            }
            put(map, "edits", edits);
        }
        return map;
    }

    private static MappingNode map(FlowStyle style) {
        return new MappingNode(Tag.MAP, new ArrayList<>(), style);
    }

    private static void put(MappingNode map, String key, Node value) {
        map.getValue().add(new NodeTuple(scalar(key), value));
    }

    /** A number or a word of YAML stays one. */
    private static Node asTyped(String text) {
        return new ScalarNode(new CoreScalarResolver(false).resolve(text, true), text, ScalarStyle.PLAIN);
    }

    /** A text; the writer sets quotation marks where it would be taken for something else. */
    private static Node scalar(String text) {
        return new ScalarNode(Tag.STR, text, ScalarStyle.PLAIN);
    }
}
