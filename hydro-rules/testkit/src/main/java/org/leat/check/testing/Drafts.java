package org.leat.check.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Which expectations may be written into their files.
 *
 * @param missing whether those that are not there yet
 * @param named ids of examples whose expectation may be written anew, and of rules whose findings are added where there are none of
 *     them yet
 */
record Drafts(boolean missing, Set<String> named) {

    static final Drafts NONE = new Drafts(false, Set.of());

    /** {@return what a switch asks for: {@code true}, or ids of examples and rules with commas between them} */
    static Drafts of(String wanted) {
        if (wanted.isBlank() || wanted.equals("false")) {
            return NONE;
        }
        return wanted.equals("true") ? new Drafts(true, Set.of()) : new Drafts(false, Set.of(wanted.split(",", -1)));
    }

    /** {@return the expectation to be written into an example's file; empty where none is} What is there stays, unless the example is named. */
    Optional<List<Told>> draft(Example example, List<Told> found) {
        List<Told> expected = example.expected();
        if (named.contains(example.id())) {
            return Optional.of(found);
        }
        if (expected == null) {
            return missing || named.contains(example.rule()) ? Optional.of(found) : Optional.empty();
        }
        Set<String> there = expected.stream().map(Told::rule).collect(Collectors.toSet());
        List<Told> added = found.stream()
                .filter(told -> named.contains(told.rule()) && !there.contains(told.rule()))
                .toList();
        List<Told> all = new ArrayList<>(expected);
        for (Told told : added) {
            all.add(placeOf(told, found, all), told);
        }
        return added.isEmpty() ? Optional.empty() : Optional.of(all);
    }

    /** {@return where a finding goes among what is expected: behind the last that the report tells before it} */
    private static int placeOf(Told told, List<Told> found, List<Told> expected) {
        List<String> subjects = expected.stream().map(Told::subject).toList();
        for (int before = found.indexOf(told) - 1; before >= 0; before--) {
            int at = subjects.lastIndexOf(found.get(before).subject());
            if (at >= 0) {
                return at + 1;
            }
        }
        return 0;
    }

    /**
     * Writes an expectation into an example's file; the rest of the file stays as it is.
     *
     * @throws IllegalArgumentException if the example is written in brackets
     */
    static void write(Example example, List<Told> told) throws IOException {
        Path file = example.file();
        String text = Files.readString(file);
        String shown = String.valueOf(file.getFileName());
        Node all = Yaml.fields(Yaml.read(text, shown), shown).get(ExampleReader.EXAMPLES);
        Node found = all == null ? null : Yaml.fields(all, shown).get(example.name());
        if (!(found instanceof MappingNode node) || node.getFlowStyle() == FlowStyle.FLOW) {
            throw new IllegalArgumentException(example.id() + ": an expectation is not written into brackets");
        }
        int indent = node.getStartMark().orElseThrow().getColumn();
        int from = lastLine(node) + 1;
        int to = from;
        for (NodeTuple tuple : node.getValue()) {
            if (Yaml.text(tuple.getKeyNode()).equals(ExampleReader.EXPECT)) {
                from = Yaml.line(tuple.getKeyNode());
                to = lastLine(tuple.getValueNode()) + 1;
            }
        }
        List<String> lines = new ArrayList<>(text.lines().toList());
        lines.subList(from, to).clear();
        boolean positions = example.listed().isEmpty() && example.changes().isEmpty();
        lines.addAll(from, ExpectationText.of(told, positions, indent).lines().toList());
        Files.writeString(file, String.join("\n", lines) + "\n");
    }

    /** A block's end mark lies behind the comments after it: its last value tells. */
    private static int lastLine(Node node) {
        if (node instanceof MappingNode map && isBlock(map)) {
            return lastLine(map.getValue().get(map.getValue().size() - 1).getValueNode());
        }
        if (node instanceof SequenceNode list && isBlock(list)) {
            return lastLine(list.getValue().get(list.getValue().size() - 1));
        }
        var end = node.getEndMark().orElseThrow(); // marks are on by default
        return end.getColumn() == 0 ? end.getLine() - 1 : end.getLine();
    }

    private static boolean isBlock(CollectionNode<?> node) {
        return node.getFlowStyle() != FlowStyle.FLOW && !node.getValue().isEmpty();
    }
}
