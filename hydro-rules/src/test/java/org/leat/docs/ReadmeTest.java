package org.leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.check.Report;

/** What the README promises holds: its example compiles and runs, its set-up is two commands. */
class ReadmeTest {

    private static final Path ROOT = Path.of("").toAbsolutePath().getParent();

    @Test
    void the_embedding_example_compiles_and_checks_a_demo_design(@TempDir Path folder) throws Exception {
        Path source = folder.resolve("CheckOne.java");
        Files.writeString(source, block("java"));
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        int failed = compiler.run(
                null,
                null,
                null,
                "-cp",
                System.getProperty("java.class.path"),
                "-d",
                folder.toString(),
                source.toString());
        assertThat(failed).isZero();
        try (URLClassLoader loader = new URLClassLoader(
                new URL[] {folder.toUri().toURL()}, getClass().getClassLoader())) {
            Method check = loader.loadClass("CheckOne").getDeclaredMethod("check", Path.class);
            check.setAccessible(true);
            Report report = (Report) check.invoke(null, ROOT.resolve("hydro-examples/designs/tannery-yard.yaml"));
            assertThat(report.findings()).isNotEmpty();
        }
    }

    @Test
    void the_embedding_example_is_about_ten_lines() throws Exception {
        assertThat(block("java").lines().filter(line -> !line.isBlank()).count())
                .isBetween(8L, 12L);
    }

    @Test
    void setting_up_takes_exactly_two_commands() throws Exception {
        List<String> commands = block("sh").lines().toList();
        assertThat(commands).hasSize(2);
        assertThat(commands.get(1)).isEqualTo("mvn verify");
    }

    private static String block(String language) throws Exception {
        Matcher m = Pattern.compile("```" + language + "\\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(ROOT.resolve("README.md")));
        assertThat(m.find()).isTrue();
        String found = m.group(1);
        assertThat(m.find()).as("a second block of " + language).isFalse();
        return found;
    }
}
