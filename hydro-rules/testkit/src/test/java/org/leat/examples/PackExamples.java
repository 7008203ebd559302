package org.leat.examples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Checker;
import org.leat.check.testing.Example;
import org.leat.check.testing.RuleTestKit;
import org.leat.pack.BuiltInPack;

/**
 * The examples of the built-in rules and those of whole plants. What comes of checking them is kept by no more than the kit
 * of one test class, so that a rule changed in the running process is asked again.
 */
final class PackExamples {

    /** The file of a rule's examples is beside the rule. */
    static final Path FOLDER = Path.of("../src/main/resources/org/leat/pack");

    static final Checker CHECKER = Checker.of(List.of(new BuiltInPack()));

    private static final Path WHOLE = Path.of("src/test/resources/whole");
    private static final List<Example> OF_RULES = read(FOLDER);
    private static final List<Example> OF_PLANTS = read(WHOLE, FOLDER.resolve("bases"));

    private PackExamples() {}

    private static List<Example> read(Path folder, Path... bases) {
        try {
            return RuleTestKit.examples(folder, bases);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Example> ofRules() {
        return OF_RULES;
    }

    static List<Example> ofPlants() {
        return OF_PLANTS;
    }

    static List<Example> all() {
        List<Example> all = new ArrayList<>(OF_RULES);
        all.addAll(OF_PLANTS);
        return all;
    }

    /**
     * {@return all; with {@code -Dleat.draft-expectations=} and ids of rules or examples only those in which something may be
     * drafted} Such a run differs anyway, and a rule's author does not wait for the rest.
     */
    static List<Example> asked() {
        List<String> named =
                List.of(System.getProperty("leat.draft-expectations", "").split(",", -1));
        boolean every = named.stream().noneMatch(id -> id.contains("/") || id.contains(":"));
        return all().stream()
                .filter(example -> every
                        || named.contains(example.rule())
                        || named.contains(example.id())
                        || example.listed().isEmpty())
                .toList();
    }

    /**
     * {@return a third of all, by the name of each, so that a run can be repeated; all of them with
     * {@code -Dleat.every-example=true}} For what solves each example many times.
     */
    static List<Example> some() {
        return all().stream()
                .filter(example -> Boolean.getBoolean("leat.every-example")
                        || Math.floorMod(example.id().hashCode(), 3) == 0)
                .toList();
    }

    static Stream<Example> failing() {
        return OF_RULES.stream().filter(example -> example.name().startsWith("fails"));
    }
}
