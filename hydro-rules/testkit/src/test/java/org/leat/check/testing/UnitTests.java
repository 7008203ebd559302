package org.leat.check.testing;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The tests of a component that are no examples, asked about a changed class: only those that hold for the unchanged one. */
final class UnitTests {

    private final ClassLoader classes;
    private final Map<String, List<String>> held = new TreeMap<>();

    UnitTests(ClassLoader classes) {
        this.classes = classes;
    }

    /** {@return the first test beside the rules of a component that notices a change; "" if none does} */
    String noticing(String component, RulesLoader changed) {
        return held.computeIfAbsent(component, this::holding).stream()
                .filter(test -> !holds(test, changed))
                .findFirst()
                .orElse("");
    }

    private List<String> holding(String component) {
        RulesLoader unchanged = new RulesLoader(classes, Map.of());
        List<String> tests = new ArrayList<>();
        for (String name : classNames(component)) {
            for (Method method : loaded(name, unchanged).getDeclaredMethods()) {
                String test = name + "#" + method.getName();
                if (method.isAnnotationPresent(Test.class) && holds(test, unchanged)) {
                    tests.add(test);
                }
            }
        }
        Collections.sort(tests);
        return List.copyOf(tests);
    }

    private List<String> classNames(String component) {
        List<String> names = new ArrayList<>();
        String folder = "org/leat/pack/" + component;
        try {
            for (URL url : Collections.list(classes.getResources(folder))) {
                if (url.getProtocol().equals("file")) {
                    try (Stream<Path> files = Files.list(Path.of(url.toURI()))) {
                        files.map(file -> String.valueOf(file.getFileName()))
                                .filter(file -> file.endsWith("Test.class"))
                                .map(file -> folder.replace('/', '.') + "." + file.replace(".class", ""))
                                .sorted(Comparator.naturalOrder())
                                .forEach(names::add);
                    }
                }
            }
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException(e);
        }
        return names;
    }

    private static Class<?> loaded(String name, RulesLoader from) {
        try {
            return Class.forName(name, false, from);
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }

    private static boolean holds(String test, RulesLoader from) {
        Steps.start();
        try {
            Class<?> type = loaded(test.substring(0, test.indexOf('#')), from);
            Constructor<?> made = type.getDeclaredConstructor();
            made.setAccessible(true);
            Method method = type.getDeclaredMethod(test.substring(test.indexOf('#') + 1));
            method.setAccessible(true);
            method.invoke(made.newInstance());
            return true;
        } catch (InvocationTargetException | LinkageError | RuntimeException e) {
            return false;
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
