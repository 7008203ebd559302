package org.leat.check.testing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.leat.check.SolvedDesign;
import org.leat.design.Design;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Designs in which one number is far from what it was, as far as the reader lets it be. Made once. */
public final class FarOff {

    private static final Pattern NUMBER = Pattern.compile("(-?[0-9]+(?:\\.[0-9]+)?)( .*)?");
    private static final List<Double> MORE = List.of(1e6, 1e3, 30.0, 14.0, 5.0, 1.3);

    private static final Map<List<String>, Map<String, List<SolvedDesign>>> MADE = new ConcurrentHashMap<>();

    private FarOff() {}

    /**
     * {@return for each number of a design the designs in which it is far off; none where the reader takes no other}
     *
     * @param base of the examples, with changes as {@link Plants#of} has them
     */
    public static Map<String, List<SolvedDesign>> of(String base, String... changes) {
        return MADE.computeIfAbsent(List.of(base, String.join("\n", changes)), same -> made(base, changes));
    }

    private static Map<String, List<SolvedDesign>> made(String base, String... changes) {
        String text = Plants.text(base, changes);
        Map<String, String> numbers = new LinkedHashMap<>();
        collect("", Yaml.read(text, base), numbers);
        Map<String, List<SolvedDesign>> all = new LinkedHashMap<>();
        numbers.forEach((path, value) -> {
            List<SolvedDesign> designs = new ArrayList<>();
            for (List<String> others : others(value)) {
                others.stream()
                        .flatMap(other -> with(text, path, other).stream())
                        .limit(1)
                        .forEach(design -> designs.add(SolvedDesign.of(design).get(0)));
            }
            all.put(path, List.copyOf(designs));
        });
        return all;
    }

    private static Optional<Design> with(String text, String path, String value) {
        Node root = Yaml.read(text, path);
        PlacePath.of(path).put(root, Yaml.read(value, path));
        return Plants.readable(Yaml.write(root));
    }

    /** {@return what is more and what is less, the farthest first} */
    private static List<List<String>> others(String value) {
        Matcher number = NUMBER.matcher(value);
        if (!number.matches()) {
            throw new IllegalArgumentException(value);
        }
        String unit = number.group(2) == null ? "" : number.group(2);
        if (unit.equals(" °C")) {
            return List.of(List.of("400 °C", "90 °C"), List.of("-120 °C", "-60 °C"));
        }
        double now = Double.parseDouble(number.group(1));
        boolean count = unit.isEmpty() && !number.group(1).contains(".");
        return Stream.of(MORE, MORE.stream().map(more -> 1 / more).toList())
                .map(times -> times.stream()
                        .map(each -> count
                                ? Long.toString(Math.round(now * each))
                                : BigDecimal.valueOf(now * each).toPlainString())
                        .map(other -> other + unit)
                        .filter(other -> !other.equals(value))
                        .toList())
                .toList();
    }

    private static void collect(String path, Node node, Map<String, String> numbers) {
        if (node instanceof ScalarNode scalar) {
            if (NUMBER.matcher(scalar.getValue()).matches() && !path.equals("/format")) {
                numbers.put(path, scalar.getValue());
            }
        } else if (node instanceof SequenceNode list) {
            for (int i = 0; i < list.getValue().size(); i++) {
                collect(
                        path + "[" + name(list.getValue().get(i), i) + "]",
                        list.getValue().get(i),
                        numbers);
            }
        } else if (node instanceof MappingNode map) {
            for (NodeTuple field : map.getValue()) {
                collect(path + "/" + Yaml.text(field.getKeyNode()), field.getValueNode(), numbers);
            }
        }
    }

    private static String name(Node item, int index) {
        Node name = item instanceof MappingNode ? Yaml.fields(item, "list").get("name") : null;
        return name == null ? Integer.toString(index) : Yaml.text(name);
    }
}
