package org.leat.check.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.leat.pack.BuiltInPack;
import org.pitest.mutationtest.engine.MutationDetails;

/**
 * Changes the rules of components one instruction at a time and tells which changes no example of a rule notices. Rules never
 * reach the solver, so each example is solved once and every changed rule is asked about the same plants.
 */
class ChangedRulesTest {

    private static final Path FOLDER = Path.of("../src/main/resources/org/leat/pack");
    private static final int LEAST_PERCENT = 90;

    @Test
    @EnabledIfSystemProperty(named = "leat.mutate", matches = "[a-z,]+")
    void most_changes_of_a_rule_are_noticed_by_its_examples() throws Exception {
        Map<String, Integer> tooFew = new TreeMap<>();
        for (String component : System.getProperty("leat.mutate", "").split(",", -1)) {
            int percent = component(component);
            if (percent < LEAST_PERCENT) {
                tooFew.put(component, percent);
            }
        }
        assertThat(tooFew).isEmpty();
    }

    private static int component(String component) throws Exception {
        ClassLoader classes = ChangedRulesTest.class.getClassLoader();
        RuleMutants mutants = new RuleMutants(classes);
        AskedRules rules = new AskedRules(classes, FOLDER, classNames(component.equals("kit") ? "" : component));
        UnitTests tests = new UnitTests(classes);
        List<String> lines = new ArrayList<>();
        int all = 0;
        int noticed = 0;
        for (String name : classNames(component)) {
            List<String> asked = rules.rulesUsing(name);
            for (MutationDetails mutant : mutants.of(name)) {
                all++;
                RulesLoader changed = new RulesLoader(classes, Map.of(name, mutants.bytes(mutant)));
                String by = name.endsWith("Rules") ? listed(name, changed) : noticing(rules, asked, changed);
                if (by.isEmpty()) {
                    by = tests.noticing(component, changed);
                }
                noticed += by.isEmpty() ? 0 : 1;
                lines.add((by.isEmpty() ? "SURVIVED " : "noticed  ")
                        + name.substring(RulesLoader.RULES.length()) + "." + mutant.getMethod() + ":"
                        + mutant.getLineNumber() + " " + mutant.getDescription() + (by.isEmpty() ? "" : "  by " + by));
            }
        }
        String sum = component + ": " + noticed + " of " + all + " noticed";
        System.out.println(sum);
        lines.add(sum);
        Path to = Files.createDirectories(Path.of("target", "changed-rules")).resolve(component + ".txt");
        Files.write(to, lines);
        return 100 * noticed / all;
    }

    private static String listed(String name, RulesLoader changed) throws ReflectiveOperationException {
        Object all = Objects.requireNonNull(
                Class.forName(name, true, changed).getMethod("all").invoke(null));
        return ((List<?>) all).isEmpty() ? "list" : "";
    }

    private static String noticing(AskedRules rules, List<String> asked, RulesLoader changed) {
        try {
            for (String rule : asked) {
                String by = rules.noticing(rule, changed);
                if (!by.isEmpty()) {
                    return by;
                }
            }
            return "";
        } catch (RuntimeException | LinkageError | StackOverflowError | Steps.Exhausted e) {
            return e.toString();
        }
    }

    private static List<String> classNames(String component) throws IOException, URISyntaxException {
        Path root = Path.of(BuiltInPack.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        try (Stream<Path> files = Files.walk(root.resolve("org/leat/pack").resolve(component))) {
            return files.map(file -> root.relativize(file).toString())
                    .filter(file -> file.endsWith(".class") && !file.contains("-info"))
                    .map(file -> file.replace(".class", "").replace('/', '.'))
                    .sorted()
                    .toList();
        }
    }
}
