package org.leat;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.lang.module.ModuleReader;
import java.lang.module.ModuleReference;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Member;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.cli.Leat;
import org.leat.design.Design;
import org.leat.rulefile.RuleFile;

/**
 * What the modules show to everyone: each type is marked, names only what is shown too, and there may only become fewer
 * without a decision.
 *
 * <p>What is counted: top-level types, each with all that is nested in it as one, for who learns {@code Outcome} learns its
 * kinds with it. A builder that the build writes is no thing of its own beside its record and is not counted. The types that
 * test rules are not among them: their artifact is never on the path of a program. Three numbers:
 * <ul>
 *   <li>{@link #WORDS}: records, enums and exceptions of {@code org.leat.design}, the design file in Java;
 *   <li>{@link #API_TYPES}: all else that is for others;
 *   <li>{@link #LEFT_OPEN}: types marked internal that lie in an exported package, for the other modules of this project.
 * </ul>
 * Lower each whenever it can be; whoever raises one says why in the change log.
 */
class PublicSurfaceTest {

    private static final int WORDS = 80;
    private static final int API_TYPES = 154;
    private static final int LEFT_OPEN = 45;

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

    /** Top-level types that somebody wrote: no builder of a record. */
    private static List<Class<?>> learnt() throws Exception {
        List<Class<?>> all = all();
        Set<String> builders = all.stream()
                .filter(Class::isRecord)
                .map(type -> type.getName().replace("$", "") + "Builder")
                .collect(Collectors.toSet());
        return all.stream()
                .filter(type -> type.getEnclosingClass() == null && !builders.contains(type.getName()))
                .toList();
    }

    private static boolean isInternal(Class<?> type) {
        API mark = type.getAnnotation(API.class);
        return mark != null && mark.status() == API.Status.INTERNAL;
    }

    @Test
    void every_type_that_is_shown_is_marked() throws Exception {
        assertThat(learnt())
                .isNotEmpty()
                .allSatisfy(type -> assertThat(type.isAnnotationPresent(API.class))
                        .as(type.getName())
                        .isTrue());
    }

    @Test
    void no_signature_that_is_shown_names_a_type_that_is_not() throws Exception {
        Set<Class<?>> shown = Set.copyOf(all());
        Set<String> hidden = new TreeSet<>();
        for (Class<?> type : shown) {
            for (Class<?> named : named(type)) {
                if (named.getName().startsWith("org.leat.") && !shown.contains(named)) {
                    hidden.add(type.getName() + " names " + named.getName());
                }
            }
        }
        assertThat(hidden).isEmpty();
    }

    /** Types in what a type extends, and in its members that are public or protected. */
    private static Set<Class<?>> named(Class<?> type) {
        Set<Class<?>> named = new HashSet<>();
        addAll(named, type.getGenericSuperclass());
        addAll(named, type.getGenericInterfaces());
        for (Executable each : Stream.concat(
                        Stream.of(type.getDeclaredMethods()), Stream.of(type.getDeclaredConstructors()))
                .filter(each -> isShown(each) && !each.isSynthetic())
                .toList()) {
            addAll(named, each.getGenericParameterTypes());
            addAll(named, each.getGenericExceptionTypes());
            addAll(named, each instanceof Method method ? method.getGenericReturnType() : null);
        }
        for (Field field : type.getDeclaredFields()) {
            if (isShown(field)) {
                addAll(named, field.getGenericType());
            }
        }
        return named;
    }

    private static boolean isShown(Member member) {
        return Modifier.isPublic(member.getModifiers()) || Modifier.isProtected(member.getModifiers());
    }

    private static void addAll(Set<Class<?>> named, @Nullable Type... types) {
        for (Type type : types) {
            if (type instanceof Class<?> plain) {
                named.add(plain.isArray() ? plain.getComponentType() : plain);
            } else if (type instanceof ParameterizedType of) {
                addAll(named, of.getRawType());
                addAll(named, of.getActualTypeArguments());
            } else if (type instanceof WildcardType any) {
                addAll(named, any.getUpperBounds());
                addAll(named, any.getLowerBounds());
            }
        }
    }

    private static String counted(List<Class<?>> types) {
        return types.stream()
                .collect(Collectors.groupingBy(Class::getPackageName, TreeMap::new, Collectors.counting()))
                .toString();
    }

    @Test
    void no_more_is_to_be_learnt_than_has_been() throws Exception {
        List<Class<?>> words = new ArrayList<>();
        List<Class<?>> others = new ArrayList<>();
        List<Class<?>> internal = new ArrayList<>();
        for (Class<?> type : learnt()) {
            (isInternal(type) ? internal : type.getPackage() == Design.class.getPackage() ? words : others).add(type);
        }
        assertThat(words.size()).as(counted(words)).isLessThanOrEqualTo(WORDS);
        assertThat(others.size()).as(counted(others)).isLessThanOrEqualTo(API_TYPES);
        assertThat(internal.size()).as(counted(internal)).isLessThanOrEqualTo(LEFT_OPEN);
    }
}
