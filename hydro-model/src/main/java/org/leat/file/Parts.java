package org.leat.file;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.design.Texts;

/** The named parts of a design's parts files, and taking them. */
final class Parts {

    static final String KEY = "part";
    static final String LIST = "parts";

    private final Map<String, Node.Fields> byName = new LinkedHashMap<>();
    private final Problems problems;
    private final boolean taken;
    private boolean incomplete;

    private Parts(Problems problems, boolean taken) {
        this.problems = problems;
        this.taken = taken;
    }

    /** {@return no parts, for files in which none is taken} */
    static Parts none(Problems problems) {
        return new Parts(problems, false);
    }

    /** {@return the parts of every file that a design's mapping lists} */
    static Parts load(Node root, PartsFinder finder, Problems problems) {
        Parts parts = new Parts(problems, true);
        Node list = root instanceof Node.Fields map ? map.fields().get(LIST) : null;
        if (list instanceof Node.Items items) {
            Set<String> seen = new LinkedHashSet<>();
            for (int i = 0; i < Math.min(items.items().size(), Design.MOST_PARTS_FILES); i++) {
                Node item = items.items().get(i);
                if (item instanceof Node.Scalar name && seen.add(name.text())) {
                    parts.file(name, "/" + LIST + "[" + i + "]", finder);
                }
            }
        }
        return parts;
    }

    private void file(Node.Scalar name, String path, PartsFinder finder) {
        PartsFinder.Found found = finder.find(name.text());
        if (found instanceof PartsFinder.Content content) {
            String shown = Texts.writable(content.displayName());
            String text = SourceText.decode(content.bytes(), shown, problems);
            if (text == null) {
                incomplete = true;
                return;
            }
            NodeReader.Result result = NodeReader.read(text, shown, problems);
            incomplete |= result.broken();
            if (result.root() != null) {
                add(result.root());
            }
            return;
        }
        incomplete = true;
        if (found instanceof PartsFinder.Missing missing) {
            problems.add(ProblemKind.PARTS_FILE_MISSING, name.at(), path, name.text(), missing.why());
        } else if (found instanceof PartsFinder.Outside) {
            problems.add(ProblemKind.PARTS_FILE_OUTSIDE, name.at(), path, name.text(), "a file in the design's folder");
        } else {
            problems.add(ProblemKind.PARTS_NOT_ALLOWED, name.at(), path, name.text(), "a design without parts files");
        }
    }

    private void add(Node root) {
        if (!(root instanceof Node.Fields map)) {
            problems.add(
                    ProblemKind.WRONG_SHAPE, root.at(), ElementPath.ROOT, Binder.shown(root), "parts by their names");
            return;
        }
        map.fields().forEach((name, part) -> {
            Position key = map.keys().getOrDefault(name, part.at());
            if (!(part instanceof Node.Fields fields)) {
                problems.add(ProblemKind.WRONG_SHAPE, part.at(), "/" + name, Binder.shown(part), "a mapping");
            } else if (byName.putIfAbsent(name, fields) != null) {
                problems.add(ProblemKind.DUPLICATE_FIELD, key, "/" + name, name, "each part once");
            }
        });
    }

    /**
     * A mapping with the fields of the part it takes.
     *
     * @param whole whether every part it takes was found
     */
    record Expanded(Node.Fields map, boolean whole) {}

    /** {@return a mapping with the fields of the part it takes; its own fields win} */
    Expanded expanded(Node.Fields map, String path) {
        if (!taken || !map.fields().containsKey(KEY)) {
            return new Expanded(map, true);
        }
        boolean whole = true;
        Map<String, Node> fields = new LinkedHashMap<>(map.fields());
        Map<String, Position> keys = new HashMap<>(map.keys());
        Set<String> way = new LinkedHashSet<>();
        Node wanted = fields.remove(KEY);
        while (wanted != null) {
            Node.Fields part = part(wanted, path, way);
            if (part == null) {
                whole = false;
                break;
            }
            Node next = part.fields().get(KEY);
            part.fields().forEach((key, value) -> {
                if (!key.equals(KEY) && fields.putIfAbsent(key, value) == null) {
                    keys.put(key, part.keys().getOrDefault(key, value.at()));
                }
            });
            wanted = next;
        }
        return new Expanded(new Node.Fields(fields, keys, map.at()), whole);
    }

    /** {@return a field of a mapping or of the part it takes, or null; reports nothing} */
    @Nullable
    Node field(Node.Fields map, String key) {
        Node.Fields in = map;
        for (int i = 0; in != null && i <= byName.size(); i++) {
            Node found = in.fields().get(key);
            if (found != null) {
                return found;
            }
            in = taken && in.fields().get(KEY) instanceof Node.Scalar name ? byName.get(name.text()) : null;
        }
        return null;
    }

    private Node.@Nullable Fields part(Node wanted, String path, Set<String> way) {
        if (!(wanted instanceof Node.Scalar name) || name.isNull()) {
            problems.add(ProblemKind.WRONG_SHAPE, wanted.at(), path, Binder.shown(wanted), "a part's name");
            return null;
        }
        if (!way.add(name.text())) {
            problems.add(ProblemKind.PART_CYCLE, name.at(), path, name.text(), String.join(" > ", way));
            return null;
        }
        Node.Fields part = byName.get(name.text());
        if (part == null && !incomplete) {
            problems.add(
                    ProblemKind.UNKNOWN_PART,
                    name.at(),
                    path,
                    name.text(),
                    "",
                    Names.nearest(name.text(), byName.keySet()),
                    List.copyOf(byName.keySet()).subList(0, Math.min(40, byName.size())));
        }
        return part;
    }
}
