package org.leat.check;

import java.util.List;
import java.util.Set;

/** What a pack's own class loader sees of this program: the Java platform and the API that a rule may use. */
final class ApiOnly extends ClassLoader {

    /** Each without the packages below it. */
    static final Set<String> API = Set.of(
            "org.leat.catalogue",
            "org.leat.check",
            "org.leat.design",
            "org.leat.file",
            "org.leat.law",
            "org.leat.plant",
            "org.leat.plant.cases",
            "org.leat.plant.numbers",
            "org.leat.plant.solved",
            "org.leat.quantity");

    /** With the packages below them. */
    private static final List<String> LIBRARIES =
            List.of("org.jspecify.annotations.", "javax.measure.", "tech.units.indriya.");

    private final ClassLoader program;

    ApiOnly(ClassLoader program) {
        super(ClassLoader.getPlatformClassLoader());
        this.program = program;
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        if (API.contains(name.substring(0, Math.max(0, name.lastIndexOf('.'))))
                || LIBRARIES.stream().anyMatch(name::startsWith)) {
            return program.loadClass(name);
        }
        throw new ClassNotFoundException(name + " is not part of what a rule may use");
    }
}
