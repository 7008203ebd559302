package org.leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The house on one screen, for contributors: every room is named, and no room that is not there. */
class HouseTest {

    private static final Path ROOT = Path.of("../..");
    private static final String SOURCES = "src/main/java/org/leat/";

    /** A component's rules are looked for under its name. */
    private static final Pattern COMPONENT = Pattern.compile("pack\\.(?!kit$)\\w+");

    @Test
    void every_package_has_its_place_in_the_layout() throws IOException {
        assertThat(packages()).hasSizeGreaterThan(30).isSubsetOf(named());
    }

    @Test
    void every_module_and_every_folder_of_examples_has_its_place_in_the_layout() throws IOException {
        Set<String> modules = Pattern.compile("<module>(.*)</module>")
                .matcher(Files.readString(ROOT.resolve("pom.xml")))
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        try (Stream<Path> folders = Files.list(ROOT.resolve("hydro-examples"))) {
            folders.filter(Files::isDirectory)
                    .map(folder -> folder.getFileName().toString())
                    .filter(name -> !name.equals("target"))
                    .forEach(modules::add);
        }
        assertThat(modules).hasSizeGreaterThan(15).isSubsetOf(named());
    }

    @Test
    void no_package_is_named_that_is_not_there() throws IOException {
        Set<String> rooms = named().stream()
                .filter(name -> name.matches("(org\\.leat\\.)?[a-z]+\\.[a-z.]+") && !name.endsWith(".jar"))
                .map(HouseTest::shortened)
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> all = packages();
        all.add("pack.penstock");
        all.add("pack.battery");
        assertThat(rooms).hasSizeGreaterThan(10).isSubsetOf(all);
    }

    private static String shortened(String name) {
        return name.replaceFirst("^org\\.leat\\.", "");
    }

    /** What the layout writes as code. */
    private static Set<String> named() throws IOException {
        String all = Files.readString(ROOT.resolve("DEVELOPERS.md"));
        String layout = all.substring(all.indexOf("## Layout"), all.indexOf("## Build"));
        return Pattern.compile("`([^`]+)`")
                .matcher(layout)
                .results()
                .flatMap(found -> Stream.of(found.group(1), shortened(found.group(1))))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Packages that hold classes, without those of the components. */
    private static Set<String> packages() throws IOException {
        Set<String> all = new TreeSet<>();
        for (String module : List.of("hydro-model", "hydro-rules")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(module))) {
                files.map(file -> file.toString().replace('\\', '/'))
                        .filter(file -> file.contains(SOURCES) && file.endsWith(".java"))
                        .filter(file -> !file.endsWith("-info.java"))
                        .map(file -> file.substring(file.indexOf(SOURCES) + SOURCES.length()))
                        .map(file -> file.substring(0, file.lastIndexOf('/')).replace('/', '.'))
                        .filter(name -> !COMPONENT.matcher(name).matches())
                        .forEach(all::add);
            }
        }
        return all;
    }
}
