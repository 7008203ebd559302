package org.leat.file;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leat.design.ElementPath;
import org.leat.design.Texts;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.parser.Parser;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.resolver.CoreScalarResolver;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/**
 * Reads the parser's events into nodes, without recursion and with a depth limit of its own. Aliases, anchors, merge
 * keys, tags, duplicate fields and further documents are problems. JSON is read as the YAML it is.
 */
final class NodeReader {

    static final int DEEPEST = 64;
    private static final CoreScalarResolver TYPES = new CoreScalarResolver(false);

    private final String file;
    private final Problems problems;
    private final Deque<Open> open = new ArrayDeque<>();
    private @Nullable Node root;
    private boolean broken;

    private NodeReader(String file, Problems problems) {
        this.file = file;
        this.problems = problems;
    }

    /**
     * What was read.
     *
     * @param root the first document's content; null if there is none
     * @param broken whether reading stopped early, so that what follows is missing
     */
    record Result(@Nullable Node root, boolean broken) {}

    static Result read(String text, String file, Problems problems) {
        NodeReader reader = new NodeReader(file, problems);
        reader.run(text);
        Node root = reader.root;
        if (!reader.broken && (root == null || (root instanceof Node.Scalar s && s.isNull()))) {
            problems.add(ProblemKind.EMPTY, Position.startOf(file), ElementPath.ROOT, "", "fields");
            root = null;
        }
        return new Result(root, reader.broken);
    }

    /** A container still being read. */
    private static final class Open {
        final CollectionStartEvent start;
        final boolean map;
        final List<Node> items = new ArrayList<>();
        final Map<String, Node> fields = new LinkedHashMap<>();
        final Map<String, Position> keys = new HashMap<>();

        @Nullable
        String key;

        boolean dropped;

        @Nullable
        Position last;

        Open(CollectionStartEvent start) {
            this.start = start;
            this.map = start instanceof MappingStartEvent;
        }
    }

    private void run(String text) {
        try {
            LoadSettings settings = LoadSettings.builder().build();
            Parser events = new ParserImpl(settings, new StreamReader(settings, text));
            while (events.hasNext() && take(events.next())) {
                // what it says is placed as it comes
            }
        } catch (MarkedYamlEngineException e) {
            Position at = e.getProblemMark().map(m -> at(m, m)).orElse(Position.startOf(file));
            stop(ProblemKind.SYNTAX, at, SyntaxWords.of(e));
        } catch (YamlEngineException e) {
            stop(ProblemKind.SYNTAX, Position.startOf(file), SyntaxWords.of(e));
        }
        // after a stop: close what is open, so that what was read can still be checked
        while (!open.isEmpty()) {
            Open in = open.pop();
            Position start = at(mark(in.start.getStartMark()), mark(in.start.getEndMark()));
            place(closed(in, in.last == null ? start : span(start, in.last)));
        }
    }

    private void stop(ProblemKind kind, Position at, String expected) {
        broken = true;
        problems.add(kind, at, path(), "", expected);
    }

    private boolean take(Event event) {
        switch (event.getEventId()) {
            case MappingStart, SequenceStart -> {
                refuse((NodeEvent) event, ((CollectionStartEvent) event).getTag());
                if (open.size() == DEEPEST) {
                    stop(ProblemKind.TOO_DEEP, at(event), "at most " + DEEPEST + " levels");
                    return false;
                }
                open.push(new Open((CollectionStartEvent) event));
            }
            case MappingEnd, SequenceEnd -> {
                Open in = open.pop();
                Position all = at(mark(in.start.getStartMark()), mark(event.getEndMark()));
                place(closed(in, in.start.isFlow() || in.last == null ? all : span(all, in.last)));
            }
            case Scalar -> place(scalar((ScalarEvent) event));
            case Alias -> {
                Position at = at(event);
                problems.add(ProblemKind.ALIAS, at, path(), "*" + ((AliasEvent) event).getAlias(), "the value");
                place(new Node.Scalar("", Tag.NULL, false, at));
            }
            default -> {
                // stream and document marks, comments
            }
        }
        return true;
    }

    private Node scalar(ScalarEvent event) {
        refuse(event, event.getTag());
        String text = event.getValue();
        int odd = Texts.firstUnwritable(text);
        if (odd >= 0) {
            String code = Texts.code(text.codePointAt(odd));
            problems.add(ProblemKind.CONTROL_CHARACTER, at(event), path(), code, "text");
            text = Texts.writable(text);
        }
        Tag tag = event.isPlain() ? TYPES.resolve(text, true) : Tag.STR;
        ScalarStyle style = event.getScalarStyle();
        boolean inline = event.getAnchor().isEmpty()
                && event.getTag().isEmpty()
                && style != ScalarStyle.LITERAL
                && style != ScalarStyle.FOLDED;
        return new Node.Scalar(text, tag, inline, at(event));
    }

    private void refuse(NodeEvent event, Optional<String> tag) {
        Optional<Anchor> anchor = event.getAnchor();
        if (anchor.isPresent()) {
            problems.add(ProblemKind.ALIAS, at(event), path(), "&" + anchor.get(), "no anchor");
        }
        if (tag.isPresent()) {
            problems.add(ProblemKind.TAG, at(event), path(), tag.get(), "no tag");
        }
    }

    private static Node closed(Open in, Position at) {
        return in.map ? new Node.Fields(in.fields, in.keys, at) : new Node.Items(in.items, at);
    }

    private void place(Node done) {
        Open out = open.peek();
        if (out == null) {
            if (root == null) {
                root = done;
            } else {
                problems.add(ProblemKind.SECOND_DOCUMENT, done.at(), path(), "", "one document");
            }
            return;
        }
        out.last = done.at();
        if (!out.map) {
            out.items.add(done);
        } else if (out.key != null) {
            if (!out.dropped) {
                out.fields.put(out.key, done);
            }
            out.key = null;
        } else {
            key(out, done);
        }
    }

    private void key(Open out, Node done) {
        out.dropped = true;
        out.key = done instanceof Node.Scalar s ? s.text() : "";
        if (!(done instanceof Node.Scalar scalar)) {
            problems.add(ProblemKind.FIELD_NAME, done.at(), path(), "", "a word as the field's name");
            return;
        }
        String key = scalar.text();
        Position first = out.keys.get(key);
        if (key.equals("<<")) {
            problems.add(ProblemKind.MERGE_KEY, done.at(), path(), key, "each field by its name");
        } else if (first != null) {
            problems.add(
                    ProblemKind.DUPLICATE_FIELD,
                    done.at(),
                    path(),
                    key,
                    "each field once",
                    Integer.toString(first.line()),
                    List.of());
        } else {
            out.keys.put(key, done.at());
            out.dropped = false;
        }
    }

    /** Where reading stands, list items by their index. */
    private String path() {
        StringBuilder path = new StringBuilder();
        open.descendingIterator().forEachRemaining(in -> {
            if (!in.map) {
                path.append('[').append(in.items.size()).append(']');
            } else if (in.key != null && !in.key.isEmpty()) {
                path.append('/').append(in.key);
            }
        });
        return path.isEmpty() ? ElementPath.ROOT : path.toString();
    }

    private Position at(Event event) {
        return at(mark(event.getStartMark()), mark(event.getEndMark()));
    }

    private Position at(Mark start, Mark end) {
        return new Position(file, start.getLine() + 1, start.getColumn() + 1, end.getLine() + 1, end.getColumn() + 1);
    }

    private static Position span(Position start, Position end) {
        return new Position(start.file(), start.line(), start.column(), end.endLine(), end.endColumn());
    }

    private static Mark mark(Optional<Mark> mark) {
        return mark.orElseThrow(); // marks are on by default
    }
}
