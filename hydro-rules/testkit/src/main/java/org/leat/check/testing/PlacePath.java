package org.leat.check.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** A place in a design file as findings name it, {@code /penstock/sections[run]/pipe/sdr}, and what can be done there. */
final class PlacePath {

    private static final Pattern STEP = Pattern.compile("/([^/\\[\\]]+)(?:\\[([^/\\[\\]]*)])?");
    private static final Pattern NUMBER = Pattern.compile("\\d{1,6}");

    private final String path;
    private final List<Step> steps;

    private PlacePath(String path, List<Step> steps) {
        this.path = path;
        this.steps = steps;
    }

    private record Step(String field, @Nullable String item) {}

    /**
     * {@return the place of that path}
     *
     * @throws IllegalArgumentException if it is no path
     */
    static PlacePath of(String path) {
        List<Step> steps = new ArrayList<>();
        Matcher m = STEP.matcher(path);
        int end = 0;
        while (m.find() && m.start() == end) {
            String item = m.group(2);
            steps.add(new Step(m.group(1), item == null ? null : unescaped(item)));
            end = m.end();
        }
        if (steps.isEmpty() || end != path.length()) {
            throw new IllegalArgumentException("not the path of a field: " + path);
        }
        return new PlacePath(path, List.copyOf(steps));
    }

    private static String unescaped(String name) {
        return name.replace("~3", "]").replace("~2", "[").replace("~1", "/").replace("~0", "~");
    }

    /**
     * Puts a value there; {@code null} takes out what stands there. Fields on the way that are absent are made, and the
     * number after a list's last adds an item.
     *
     * @throws IllegalArgumentException if the path leads nowhere, there is nothing to take out, or the same stands there
     */
    void put(Node root, Node value) {
        Node at = root;
        for (Step step : steps.subList(0, steps.size() - 1)) {
            at = down(at, step);
        }
        Step last = steps.get(steps.size() - 1);
        if (last.item() == null) {
            put(map(at), last.field(), value);
        } else {
            put(list(at, last.field()), last.item(), value);
        }
    }

    private void put(MappingNode map, String field, Node value) {
        List<NodeTuple> tuples = map.getValue();
        int index = index(map, field);
        if (Yaml.isNull(value)) {
            refuseIf(index < 0, "there is nothing to take out");
            tuples.remove(index);
        } else if (index < 0) {
            tuples.add(new NodeTuple(plain(field), value));
        } else {
            refuseIf(same(tuples.get(index).getValueNode(), value), "the same stands there already");
            tuples.set(index, new NodeTuple(tuples.get(index).getKeyNode(), value));
        }
    }

    private void put(SequenceNode list, String item, Node value) {
        int index = index(list, item);
        if (Yaml.isNull(value)) {
            refuseIf(index < 0, "there is nothing to take out");
            list.getValue().remove(index);
        } else if (index < 0) {
            refuseIf(!item.equals(Integer.toString(list.getValue().size())), "there is no such item");
            list.getValue().add(value);
        } else {
            refuseIf(same(list.getValue().get(index), value), "the same stands there already");
            list.getValue().set(index, value);
        }
    }

    private Node down(Node at, Step step) {
        if (step.item() != null) {
            SequenceNode list = list(at, step.field());
            int index = index(list, step.item());
            refuseIf(index < 0, "there is no such item");
            return list.getValue().get(index);
        }
        MappingNode map = map(at);
        int index = index(map, step.field());
        if (index < 0) {
            MappingNode made = new MappingNode(Tag.MAP, new ArrayList<>(), FlowStyle.BLOCK);
            map.getValue().add(new NodeTuple(plain(step.field()), made));
            return made;
        }
        return map.getValue().get(index).getValueNode();
    }

    private MappingNode map(Node node) {
        refuseIf(!(node instanceof MappingNode), "there are no fields");
        return (MappingNode) node;
    }

    private SequenceNode list(Node at, String field) {
        MappingNode map = map(at);
        int index = index(map, field);
        refuseIf(index < 0 || !(map.getValue().get(index).getValueNode() instanceof SequenceNode), "there is no list");
        return (SequenceNode) map.getValue().get(index).getValueNode();
    }

    private static int index(MappingNode map, String field) {
        for (int i = 0; i < map.getValue().size(); i++) {
            if (Yaml.text(map.getValue().get(i).getKeyNode()).equals(field)) {
                return i;
            }
        }
        return -1;
    }

    /** By name; by number only where no item has that name. */
    private static int index(SequenceNode list, String item) {
        List<Node> items = list.getValue();
        for (int i = 0; i < items.size(); i++) {
            if (items.get(i) instanceof MappingNode map) {
                int name = index(map, "name");
                if (name >= 0
                        && Yaml.text(map.getValue().get(name).getValueNode()).equals(item)) {
                    return i;
                }
            }
        }
        boolean number = NUMBER.matcher(item).matches() && Integer.parseInt(item) < items.size();
        return number ? Integer.parseInt(item) : -1;
    }

    private static boolean same(Node one, Node other) {
        return one.getTag().equals(other.getTag()) && Yaml.text(one).equals(Yaml.text(other));
    }

    private static Node plain(String field) {
        return new ScalarNode(Tag.STR, field, ScalarStyle.PLAIN);
    }

    private void refuseIf(boolean wrong, String why) {
        if (wrong) {
            throw new IllegalArgumentException(path + ": " + why);
        }
    }
}
