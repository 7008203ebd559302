package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.File;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** On the module path the classes of JSpecify's annotations are often not there. */
class WithoutAnnotationClassesTest {

    @Test
    void a_design_reads_where_the_class_of_a_nullness_mark_is_not_there() throws Exception {
        URL[] urls = Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(entry -> !entry.contains("jspecify"))
                .map(WithoutAnnotationClassesTest::url)
                .toArray(URL[]::new);
        try (URLClassLoader alone = new URLClassLoader(urls, ClassLoader.getPlatformClassLoader())) {
            assertThatExceptionOfType(ClassNotFoundException.class)
                    .isThrownBy(() -> alone.loadClass("org.jspecify.annotations.Nullable"));
            Class<?> reader = alone.loadClass(DesignReader.class.getName());
            assertThat(reader).isNotSameAs(DesignReader.class);
            Object reading =
                    reader.getMethod("read", String.class, String.class).invoke(null, SampleFiles.alderBeck(), "f");
            assertThat((List<?>) reading.getClass().getMethod("problems").invoke(reading))
                    .isEmpty();
            assertThat(reading.getClass().getMethod("design").invoke(reading)).isNotNull();
        }
    }

    private static URL url(String entry) {
        try {
            return new File(entry).toURI().toURL();
        } catch (MalformedURLException e) {
            throw new IllegalStateException(e);
        }
    }
}
