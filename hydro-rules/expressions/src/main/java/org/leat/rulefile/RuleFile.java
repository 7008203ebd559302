package org.leat.rulefile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.leat.check.Rule;
import org.leat.check.RulePack;
import org.leat.expression.Expressions;
import org.leat.file.Position;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * Reads rule files: YAML 1.2 or JSON, format 1. Everything that is wrong in one pass is told with its place; a file with
 * problems gives no pack. Nothing of a rule file reaches files, the network or classes, and its work is bounded.
 */
public final class RuleFile {

    /** The version of the file format that is read. */
    public static final int FORMAT = 1;

    /** The largest file read, bytes. */
    public static final int LARGEST = 1 << 18;

    private static final int MOST_RULES = 200;
    private static final List<String> FIELDS = List.of("format", "name", "rules");

    private RuleFile() {}

    /**
     * {@return what a file says}
     *
     * @throws IOException if it cannot be read
     */
    public static RuleFileReading read(Path file) throws IOException {
        String name = file.toString();
        if (Files.size(file) > LARGEST) {
            return refused(name, "the file is larger than " + LARGEST + " bytes");
        }
        try {
            ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
            return read(StandardCharsets.UTF_8.newDecoder().decode(bytes).toString(), name);
        } catch (CharacterCodingException e) {
            return refused(name, "the file is not UTF-8 text");
        }
    }

    /**
     * {@return what a text says}
     *
     * @param name to be shown as the file's name
     */
    public static RuleFileReading read(String text, String name) {
        if (text.length() > LARGEST) {
            return refused(name, "the file is larger than " + LARGEST + " bytes");
        }
        String source = text.startsWith("\uFEFF") ? text.substring(1) : text;
        List<RuleFileProblem> problems = new ArrayList<>();
        Yaml yaml = new Yaml(source, name, problems);
        Node root = yaml.root();
        RulePack pack = root == null ? null : pack(yaml, root);
        Collections.sort(problems);
        return new RuleFileReading(problems.isEmpty() ? pack : null, problems);
    }

    private static RuleFileReading refused(String name, String why) {
        return new RuleFileReading(null, List.of(new RuleFileProblem(new Position(name, 1, 1, 1, 1), why)));
    }

    private static RulePack pack(Yaml yaml, Node root) {
        Map<String, Node> fields = yaml.fields(root, FIELDS);
        Written pack = new Written("", List.of(), Map.of());
        if (fields == null) {
            return pack;
        }
        ScalarNode format = yaml.scalar(fields.get("format"), "the format");
        if (format == null) {
            if (fields.get("format") == null) {
                yaml.problem(root, "the version of the file format is missing; write format: " + FORMAT);
            }
        } else if (!format.getValue().equals(Integer.toString(FORMAT))) {
            yaml.problem(format, "format " + format.getValue() + " is not read here; expected " + FORMAT);
            return pack;
        }
        ScalarNode name = yaml.scalar(fields.get("name"), "the pack's name");
        if (fields.get("name") == null) {
            yaml.problem(root, "\"name\" is missing: what the pack is called");
        }
        List<Node> nodes = yaml.items(fields.get("rules"), "rules");
        if (nodes.isEmpty() && !(fields.get("rules") instanceof ScalarNode)) {
            yaml.problem(root, "\"rules\" is missing: at least one rule");
        }
        if (nodes.size() > MOST_RULES) {
            yaml.problem(nodes.get(MOST_RULES), "more than " + MOST_RULES + " rules");
            return pack;
        }
        List<Rule> rules = new ArrayList<>();
        Map<String, String> texts = new LinkedHashMap<>();
        Expressions expressions = new Expressions();
        Set<String> ids = new TreeSet<>();
        for (Node node : nodes) {
            WrittenRule rule = new RuleReader(yaml, expressions, texts).rule(node);
            if (rule != null && !ids.add(rule.card().id())) {
                yaml.problem(node, "two rules are called " + rule.card().id());
            } else if (rule != null) {
                rules.add(Rule.legacy(rule));
            }
        }
        return new Written(name == null ? "" : name.getValue(), List.copyOf(rules), texts);
    }

    /** A pack of a file. */
    private record Written(String name, List<Rule> rules, Map<String, String> texts) implements RulePack {}
}
