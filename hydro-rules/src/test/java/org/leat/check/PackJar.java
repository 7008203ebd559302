package org.leat.check;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** Compiles one source text and puts it in a jar that registers it as a pack. */
public final class PackJar {

    private PackJar() {}

    /** {@return the folder of classes of a source} */
    public static Path compile(Path folder, String className, String source) {
        var compiler = ToolProvider.getSystemJavaCompiler();
        var file =
                new SimpleJavaFileObject(
                        URI.create("string:///" + className.replace('.', '/') + ".java"), JavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignore) {
                        return source;
                    }
                };
        var said = new java.io.StringWriter();
        boolean fine = compiler.getTask(
                        said,
                        null,
                        null,
                        List.of("-proc:none", "-d", folder.toString(), "-cp", System.getProperty("java.class.path")),
                        null,
                        List.of(file))
                .call();
        if (!fine) {
            throw new AssertionError(said.toString());
        }
        return folder;
    }

    /** {@return a jar of a compiled source} */
    public static Path jar(Path folder, String className, String source) throws IOException {
        return jar(folder, className, source, className + "\n");
    }

    /** {@return a jar of a compiled source with a registration of any text} */
    public static Path jar(Path folder, String className, String source, String registration) throws IOException {
        Path classes = compile(Files.createTempDirectory(folder, "classes"), className, source);
        Path jar = folder.resolve(className.substring(className.lastIndexOf('.') + 1) + ".jar");
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream zip = new JarOutputStream(out);
                Stream<Path> files = Files.walk(classes)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                zip.putNextEntry(
                        new JarEntry(classes.relativize(file).toString().replace('\\', '/')));
                zip.write(Files.readAllBytes(file));
            }
            zip.putNextEntry(new JarEntry("META-INF/services/org.leat.check.RulePack"));
            zip.write(registration.getBytes(StandardCharsets.UTF_8));
        }
        return jar;
    }
}
