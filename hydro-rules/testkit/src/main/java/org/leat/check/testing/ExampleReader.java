package org.leat.check.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads a file of examples. What is not of the form is refused: a word misspelt must not leave something untested. */
final class ExampleReader {

    static final String EXAMPLES = "examples";
    static final String EXPECT = "expect";
    private static final String ALL = "all";

    private final Path root;
    private final List<Path> bases;
    private final Path file;
    private final String shown;

    private ExampleReader(Path root, List<Path> bases, Path file) {
        this.root = root;
        this.bases = List.copyOf(bases);
        this.file = file;
        this.shown = String.valueOf(file.getFileName());
    }

    /**
     * {@return the examples of a file}
     *
     * @param root the folder above which no base design is looked for
     * @param bases where else one is looked for
     * @throws IllegalArgumentException if it is not of the form, with file, line and column
     */
    static List<Example> read(Path root, List<Path> bases, Path file) throws IOException {
        return new ExampleReader(root, bases, file).read(Files.readString(file));
    }

    private List<Example> read(String text) {
        Node all = Yaml.read(text, shown);
        Map<String, Node> fields = known(all, Set.of("rule", EXAMPLES));
        String rule = fields.containsKey("rule") ? Yaml.text(fields.get("rule")) : "";
        List<Example> examples = new ArrayList<>();
        Yaml.fields(needed(fields, EXAMPLES, all), shown).forEach((name, node) -> examples.add(one(rule, name, node)));
        if (examples.isEmpty()) {
            throw wrong(all, "there is no example");
        }
        return examples;
    }

    private Example one(String rule, String name, Node node) {
        Map<String, Node> fields = known(node, Set.of("why", "base", "change", "rules", EXPECT));
        String why = Yaml.text(needed(fields, "why", node));
        Path base = base(needed(fields, "base", node));
        List<Example.Change> changes = new ArrayList<>();
        if (fields.containsKey("change")) {
            Yaml.fields(fields.get("change"), shown)
                    .forEach((path, value) -> changes.add(new Example.Change(path, value, Yaml.at(shown, value))));
        }
        Set<String> listed = listed(rule, fields.get("rules"), node);
        List<Told> expected = fields.containsKey(EXPECT) ? expected(fields.get(EXPECT), listed, changes) : null;
        return new Example(file, rule, name, why, base, changes, listed, expected);
    }

    private Set<String> listed(String rule, @Nullable Node rules, Node example) {
        if (rules != null && Yaml.text(rules).equals(ALL)) {
            return Set.of();
        }
        Set<String> listed = new LinkedHashSet<>();
        if (!rule.isEmpty()) {
            listed.add(rule);
        }
        if (rules != null) {
            Yaml.items(rules, shown).forEach(item -> listed.add(Yaml.text(item)));
        }
        if (listed.isEmpty()) {
            throw wrong(example, "no rule is named");
        }
        return listed;
    }

    /** Beside the example, in the folder {@code bases} there or above, or where else it was said to be. */
    private Path base(Node named) {
        List<Path> folders = new ArrayList<>();
        Path folder = file.getParent();
        for (Path at = folder; at != null && at.startsWith(root); at = at.getParent()) {
            folders.add(at.resolve(RuleTestKit.BASES));
        }
        if (folder != null) {
            folders.add(0, folder);
        }
        folders.addAll(bases);
        String name = Yaml.text(named) + ".yaml";
        return folders.stream()
                .map(in -> in.resolve(name))
                .filter(Files::isRegularFile)
                .findFirst()
                .orElseThrow(() -> wrong(named, "there is no design " + name + " in any of " + folders));
    }

    private List<Told> expected(Node list, Set<String> listed, List<Example.Change> changes) {
        List<Told> expected = new ArrayList<>();
        for (Node item : Yaml.items(list, shown)) {
            Told told = told(item);
            if (!listed.isEmpty() && !listed.contains(told.rule())) {
                throw wrong(item, told.rule() + " is not among the rules that are listed");
            }
            if (!changes.isEmpty() && !told.fact(Told.POSITION).isEmpty()) {
                throw wrong(item, "a position is that of an unchanged file");
            }
            expected.add(told);
        }
        return expected;
    }

    private Told told(Node item) {
        Map<String, Node> fields = new LinkedHashMap<>(Yaml.fields(item, shown));
        Node text = needed(fields, "text", item);
        Node ways = fields.get("ways-out");
        fields.keySet().removeAll(Set.of("text", "ways-out"));
        if (fields.size() != 1) {
            throw wrong(item, "a finding has a rule with its facts, a text and its ways out");
        }
        Map.Entry<String, Node> rule = fields.entrySet().iterator().next();
        Map<String, String> facts = new LinkedHashMap<>();
        known(rule.getValue(), Set.copyOf(Told.FACTS)).forEach((name, value) -> facts.put(name, Yaml.text(value)));
        if (!facts.keySet().containsAll(Set.of("kind", "level", "at"))) {
            throw wrong(item, "a finding has at least a kind, a level and a place");
        }
        List<Told.Way> waysOut = new ArrayList<>();
        if (ways != null) {
            Yaml.items(ways, shown).forEach(way -> waysOut.add(way(way)));
        }
        return new Told(rule.getKey(), facts, Yaml.text(text), waysOut);
    }

    private Told.Way way(Node node) {
        Map<String, Node> fields = known(node, Set.of("text", "watts", "edits"));
        Map<String, String> edits = new LinkedHashMap<>();
        if (fields.containsKey("edits")) {
            Yaml.fields(fields.get("edits"), shown).forEach((path, value) -> edits.put(path, Yaml.text(value)));
        }
        String watts = fields.containsKey("watts") ? Yaml.text(fields.get("watts")) : "";
        return new Told.Way(Yaml.text(needed(fields, "text", node)), watts, edits);
    }

    private Map<String, Node> known(Node node, Set<String> names) {
        Map<String, Node> fields = Yaml.fields(node, shown);
        fields.forEach((name, value) -> {
            if (!names.contains(name)) {
                throw wrong(value, name + " is not known here");
            }
        });
        return fields;
    }

    private Node needed(Map<String, Node> fields, String name, Node in) {
        Node found = fields.get(name);
        if (found == null || Yaml.isNull(found)) {
            throw wrong(in, name + " is missing");
        }
        return found;
    }

    private IllegalArgumentException wrong(Node node, String what) {
        return new IllegalArgumentException(Yaml.at(shown, node) + ": " + what);
    }
}
