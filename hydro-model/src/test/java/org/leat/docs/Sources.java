package org.leat.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Where the documents and the sources of hydro-model lie. */
final class Sources {

    /** The project's directory; tests run in that of their module. */
    static final Path ROOT = Path.of("").toAbsolutePath().getParent();

    private static final Path MAIN = ROOT.resolve("hydro-model/src/main/java");

    private Sources() {}

    /** {@return every top-level type of hydro-model, as its source files name them} */
    static List<Class<?>> types() {
        try (Stream<Path> files = Files.walk(MAIN)) {
            return files.map(MAIN::relativize)
                    .map(file -> file.toString().replace('\\', '/'))
                    .filter(file -> file.endsWith(".java") && !file.endsWith("-info.java"))
                    .map(file ->
                            file.substring(0, file.length() - ".java".length()).replace('/', '.'))
                    .<Class<?>>map(Sources::load)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name, false, Sources.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException("not compiled: " + name, e);
        }
    }
}
