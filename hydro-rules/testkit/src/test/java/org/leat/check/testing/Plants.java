package org.leat.check.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.leat.check.Change;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.SolvedDesign;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.snakeyaml.engine.v2.nodes.Node;

/** Base designs of the examples with some values changed, for tests that are no examples. A plant is made once. */
public final class Plants {

    private static final Path BASES = Path.of("../src/main/resources/org/leat/pack/bases");
    private static final Map<List<String>, SolvedDesign> MADE = new ConcurrentHashMap<>();

    private Plants() {}

    /**
     * {@return the plant of a base}
     *
     * @param changes each a path, a colon and what stands there then, as in a file of examples
     */
    public static SolvedDesign of(String base, String... changes) {
        return MADE.computeIfAbsent(
                List.of(base, String.join("\n", changes)),
                same -> SolvedDesign.of(design(text(base, changes))).get(0));
    }

    /** {@return the design of a base} */
    public static Design design(String base, String... changes) {
        return design(text(base, changes));
    }

    /** {@return what a change does, as a file of examples has it: value by path} */
    public static Map<String, String> edits(Change change) {
        return edits(change.edits());
    }

    /** {@return what edits do, as a file of examples has it: value by path} */
    public static Map<String, String> edits(List<Edit> edits) {
        Map<String, String> texts = new LinkedHashMap<>();
        edits.forEach(edit -> texts.put(edit.path(), EditText.of(edit.value())));
        return texts;
    }

    /** {@return a number that a change says, in SI} */
    public static double told(Change change, Judgement j, String name) {
        return SolvedDesign.told(change, j, name);
    }

    private static Design design(String text) {
        Reading reading = DesignReader.read(text, "changed");
        if (reading.design() == null) {
            throw new IllegalArgumentException(String.valueOf(reading.problems()));
        }
        return reading.design();
    }

    /** {@return the design of a text; empty where the reader refuses it} */
    static Optional<Design> readable(String text) {
        Reading reading = DesignReader.read(text, "changed");
        return reading.problems().isEmpty() ? Optional.ofNullable(reading.design()) : Optional.empty();
    }

    static String text(String base, String... changes) {
        try {
            String text = Files.readString(BASES.resolve(base + ".yaml"));
            Node root = Yaml.read(text, base);
            for (String change : changes) {
                int colon = change.indexOf(": ");
                PlacePath.of(change.substring(0, colon)).put(root, Yaml.read(change.substring(colon + 2), change));
            }
            return Yaml.write(root);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
