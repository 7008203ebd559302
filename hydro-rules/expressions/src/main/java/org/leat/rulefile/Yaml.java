package org.leat.rulefile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leat.file.Names;
import org.leat.file.Position;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** A rule file's YAML, with the place of everything, and what is wrong with it. */
final class Yaml {

    private final String file;
    private final String source;
    private final List<RuleFileProblem> problems;

    Yaml(String source, String file, List<RuleFileProblem> problems) {
        this.source = source;
        this.file = file;
        this.problems = problems;
    }

    /** {@return the file's content, or null after a problem} */
    @Nullable
    Node root() {
        LoadSettings settings = LoadSettings.builder()
                .setMaxAliasesForCollections(0)
                .setAllowDuplicateKeys(false)
                .build();
        try {
            Optional<Node> root = new Compose(settings).composeString(source);
            if (root.isEmpty()) {
                problem(new Position(file, 1, 1, 1, 1), "the file holds nothing");
            }
            return root.orElse(null);
        } catch (MarkedYamlEngineException e) {
            Position at = e.getProblemMark().map(this::position).orElse(new Position(file, 1, 1, 1, 1));
            problem(at, "not readable here: " + e.getProblem());
        } catch (YamlEngineException e) {
            problem(new Position(file, 1, 1, 1, 1), "not readable: " + e.getMessage());
        } catch (StackOverflowError e) {
            problem(new Position(file, 1, 1, 1, 1), "nested too deep");
        }
        return null;
    }

    void problem(Position at, String text) {
        problems.add(new RuleFileProblem(at, text));
    }

    void problem(Node at, String text) {
        problem(position(at), text);
    }

    Position position(Node node) {
        return node.getStartMark().map(this::position).orElse(new Position(file, 1, 1, 1, 1));
    }

    private Position position(Mark mark) {
        return new Position(file, mark.getLine() + 1, mark.getColumn() + 1, mark.getLine() + 1, mark.getColumn() + 2);
    }

    /** {@return where a character of a text value stands} */
    Position within(ScalarNode node, int line, int column) {
        Mark mark = node.getStartMark().orElseThrow();
        boolean block = node.getScalarStyle() == ScalarStyle.LITERAL || node.getScalarStyle() == ScalarStyle.FOLDED;
        int start = source.offsetByCodePoints(0, mark.getIndex());
        return new SourceWalk(source, file, start, mark.getLine() + 1, mark.getColumn() + 1)
                .of(node.getValue(), block, line, column);
    }

    /** {@return the fields of a mapping, those that nobody knows told and left out; null after a problem} */
    @Nullable
    Map<String, Node> fields(Node node, List<String> known) {
        if (!(node instanceof MappingNode mapping)) {
            problem(node, "expected a mapping");
            return null;
        }
        Map<String, Node> fields = new LinkedHashMap<>();
        for (NodeTuple tuple : mapping.getValue()) {
            String key = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
            if (!known.isEmpty() && !known.contains(key)) {
                String nearest = Names.nearest(key, known);
                problem(
                        tuple.getKeyNode(),
                        "no field is called \"" + key + "\""
                                + (nearest.isEmpty()
                                        ? "; known here: " + String.join(", ", known)
                                        : "; did you mean \"" + nearest + "\"?"));
            } else if (fields.put(key, tuple.getValueNode()) != null) {
                problem(tuple.getKeyNode(), "\"" + key + "\" is given twice");
            }
        }
        return fields;
    }

    /** {@return the items of a list; none after a problem} */
    List<Node> items(@Nullable Node node, String what) {
        if (node instanceof SequenceNode sequence) {
            return new ArrayList<>(sequence.getValue());
        }
        if (node != null) {
            problem(node, "expected a list of " + what);
        }
        return List.of();
    }

    /** {@return a plain value; null after a problem} */
    @Nullable
    ScalarNode scalar(@Nullable Node node, String what) {
        if (node instanceof ScalarNode scalar && !scalar.getValue().isBlank()) {
            return scalar;
        }
        if (node != null) {
            problem(node, "expected " + what);
        }
        return null;
    }
}
