package org.leat.check;

import java.util.List;

/** What a pack's own class loader sees of this program: the Java platform and the API that a rule may use. */
final class ApiOnly extends ClassLoader {

    private static final List<String> API = List.of(
            "org.leat.catalogue.",
            "org.leat.check.",
            "org.leat.design.",
            "org.leat.electrics.",
            "org.leat.file.",
            "org.leat.hydraulics.",
            "org.leat.law.",
            "org.leat.plant.",
            "org.leat.quantity.",
            "org.leat.turbine.",
            "org.jspecify.annotations.",
            "javax.measure.",
            "tech.units.indriya.");

    private final ClassLoader program;

    ApiOnly(ClassLoader program) {
        super(ClassLoader.getPlatformClassLoader());
        this.program = program;
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        if (API.stream().anyMatch(name::startsWith)) {
            return program.loadClass(name);
        }
        throw new ClassNotFoundException(name + " is not part of what a rule may use");
    }
}
