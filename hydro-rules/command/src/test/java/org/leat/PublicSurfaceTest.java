package org.leat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReader;
import java.lang.module.ModuleReference;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apiguardian.api.API;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.cli.Leat;
import org.leat.design.Design;
import org.leat.rulefile.RuleFile;

/** What the modules show to everyone: it is marked, and it may only become less without a decision. */
class PublicSurfaceTest {

    /**
     * As many public types, nested ones and builders among them, are exported. Lower it whenever it can be; whoever raises it
     * says why in the change log.
     */
    private static final int MOST = 530;

    private static ModuleReference module(Class<?> of) throws URISyntaxException {
        Path place =
                Path.of(of.getProtectionDomain().getCodeSource().getLocation().toURI());
        return ModuleFinder.of(place).findAll().iterator().next();
    }

    private static Set<String> exported(ModuleReference module) {
        return module.descriptor().exports().stream()
                .filter(exports -> !exports.isQualified())
                .map(ModuleDescriptor.Exports::source)
                .collect(Collectors.toSet());
    }

    /** Public types of exported packages, nested ones among them if all that they are nested in is public. */
    private static List<Class<?>> types(ModuleReference module) throws IOException, ReflectiveOperationException {
        Set<String> exported = exported(module);
        List<Class<?>> types = new ArrayList<>();
        try (ModuleReader reader = module.open();
                Stream<String> names = reader.list()) {
            for (String name : names.sorted().toList()) {
                int slash = name.lastIndexOf('/');
                if (!name.endsWith(".class")
                        || slash < 0
                        || name.endsWith("-info.class")
                        || !exported.contains(name.substring(0, slash).replace('/', '.'))) {
                    continue;
                }
                String type =
                        name.substring(0, name.length() - ".class".length()).replace('/', '.');
                Class<?> found = Class.forName(type, false, PublicSurfaceTest.class.getClassLoader());
                if (isPublic(found)) {
                    types.add(found);
                }
            }
        }
        return types;
    }

    private static boolean isPublic(Class<?> type) {
        for (Class<?> at = type; at != null; at = at.getEnclosingClass()) {
            if (!Modifier.isPublic(at.getModifiers())) {
                return false;
            }
        }
        return true;
    }

    private static List<Class<?>> all() throws Exception {
        List<Class<?>> all = new ArrayList<>();
        for (Class<?> one : List.of(Design.class, Checker.class, RuleFile.class)) {
            all.addAll(types(module(one)));
        }
        return all;
    }

    @Test
    void the_modules_are_called_as_documented_and_the_command_line_shows_nothing() throws Exception {
        assertThat(module(Design.class).descriptor().name()).isEqualTo("org.leat.model");
        assertThat(module(Checker.class).descriptor().name()).isEqualTo("org.leat.rules");
        assertThat(module(RuleFile.class).descriptor().name()).isEqualTo("org.leat.rules.expressions");
        assertThat(module(Leat.class).descriptor().name()).isEqualTo("org.leat.rules.command");
        assertThat(module(Leat.class).descriptor().exports()).isEmpty();
    }

    @Test
    void laws_and_rules_are_not_shown_to_everyone() throws Exception {
        Set<String> shown = exported(module(Design.class));
        shown.addAll(exported(module(Checker.class)));
        assertThat(shown)
                .contains("org.leat.design", "org.leat.check")
                .noneMatch(p -> p.matches("org\\.leat\\.(hydraulics|turbine|electrics|pack\\..*)"));
    }

    @Test
    void every_type_that_is_shown_is_marked_or_its_package_is() throws Exception {
        assertThat(all()).isNotEmpty().allSatisfy(type -> {
            Class<?> outermost = type;
            while (outermost.getEnclosingClass() != null) {
                outermost = outermost.getEnclosingClass();
            }
            boolean marked = outermost.isAnnotationPresent(API.class)
                    || outermost.getPackage().isAnnotationPresent(API.class);
            assertThat(marked).as(type.getName()).isTrue();
        });
    }

    @Test
    void no_more_types_are_shown_than_have_been() throws Exception {
        List<Class<?>> all = all();
        assertThat(all.size())
                .as(all.stream()
                        .collect(Collectors.groupingBy(
                                Class::getPackageName, java.util.TreeMap::new, Collectors.counting()))
                        .toString())
                .isLessThanOrEqualTo(MOST);
    }
}
