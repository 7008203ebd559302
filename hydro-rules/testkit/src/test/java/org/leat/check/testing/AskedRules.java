package org.leat.check.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Field;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leat.check.Checker;
import org.leat.check.Rule;
import org.leat.check.SolvedDesign;
import org.leat.pack.BuiltInPack;

/**
 * The rules of a component, each with its examples solved once, and which of them a class is used by. What an example expects is
 * what the rule says of it unchanged: {@link RuleAloneTest} holds that to be what its file says.
 */
final class AskedRules {

    private static final Pattern USED = Pattern.compile("org/leat/pack/[A-Za-z0-9_/$]+");

    /** A solved example and what the rule says of it as it is. */
    private record Asked(String example, SolvedDesign design, List<Told> told) {}

    private final ClassLoader classes;
    private final Telling telling =
            new Telling(Checker.of(List.of(new BuiltInPack())).rulebook());
    private final Path folder;
    private final Map<String, String> ruleOfClass = new TreeMap<>();
    private final Map<String, Set<String>> uses = new HashMap<>();
    private final Map<String, List<Asked>> asked = new HashMap<>();

    AskedRules(ClassLoader classes, Path folder, List<String> classNames) throws ReflectiveOperationException {
        this.classes = classes;
        this.folder = folder;
        for (String name : classNames) {
            if (!name.contains("$") && !name.endsWith("Rules")) {
                Field field = ruleField(Class.forName(name, false, classes));
                if (field != null) {
                    ruleOfClass.put(name, ((Rule) Objects.requireNonNull(field.get(null))).id());
                }
            }
        }
    }

    private static @Nullable Field ruleField(Class<?> type) {
        for (Field field : type.getDeclaredFields()) {
            if (field.getType() == Rule.class) {
                field.setAccessible(true);
                return field;
            }
        }
        return null;
    }

    /** {@return the classes of rules that use a class, by name} */
    List<String> rulesUsing(String className) throws ClassNotFoundException {
        List<String> using = new ArrayList<>();
        for (String rule : ruleOfClass.keySet()) {
            if (reaches(rule, className)) {
                using.add(rule);
            }
        }
        return using;
    }

    private boolean reaches(String from, String to) throws ClassNotFoundException {
        Set<String> seen = new TreeSet<>();
        Deque<String> next = new ArrayDeque<>(List.of(from));
        while (!next.isEmpty()) {
            String name = next.pop();
            if (name.equals(to)) {
                return true;
            }
            if (seen.add(name)) {
                next.addAll(used(name));
            }
        }
        return false;
    }

    private Set<String> used(String name) throws ClassNotFoundException {
        Set<String> known = uses.get(name);
        if (known == null) {
            known = new TreeSet<>();
            String bytes = new String(RulesLoader.bytes(classes, name), StandardCharsets.ISO_8859_1);
            for (Matcher matcher = USED.matcher(bytes); matcher.find(); ) {
                String used = matcher.group().replace('/', '.');
                if (classes.getResource(matcher.group() + ".class") != null) {
                    known.add(used);
                }
            }
            uses.put(name, known);
        }
        return known;
    }

    /** {@return the first example of a rule that notices a change; "" if none does} */
    String noticing(String ruleClass, RulesLoader changed) {
        Steps.start();
        Rule rule;
        try {
            Field field = Objects.requireNonNull(ruleField(Class.forName(ruleClass, true, changed)));
            rule = (Rule) Objects.requireNonNull(field.get(null));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
        for (Asked one : examples(ruleClass)) {
            Steps.start();
            if (!told(one.design(), rule).equals(one.told())) {
                return one.example();
            }
        }
        return "";
    }

    private List<Told> told(SolvedDesign design, Rule rule) {
        return design.findings(rule).stream()
                .map(finding -> telling.of(finding, design.alternative()))
                .toList();
    }

    private List<Asked> examples(String ruleClass) {
        return asked.computeIfAbsent(ruleClass, this::solved);
    }

    private List<Asked> solved(String ruleClass) {
        String id = ruleOfClass.get(ruleClass);
        Rule rule = new BuiltInPack()
                .rules().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
        List<Asked> all = new ArrayList<>();
        RuleTestKit kit = new RuleTestKit(Checker.of(List.of(new BuiltInPack())));
        try {
            Path component = Objects.requireNonNull(folder.resolve(rule.id()).getParent());
            List<Example> examples = new ArrayList<>(RuleTestKit.examples(component, folder.resolve("bases")));
            examples.addAll(EdgeExamplesTest.all());
            for (Example example : examples) {
                if (example.rule().equals(rule.id())) {
                    for (SolvedDesign design : SolvedDesign.of(
                            Objects.requireNonNull(kit.read(example).design()))) {
                        all.add(new Asked(example.id(), design, told(design, rule)));
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }
}
