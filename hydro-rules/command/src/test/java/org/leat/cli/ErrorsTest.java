package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Errors of the machine are never taken for findings. */
class ErrorsTest {

    @ParameterizedTest
    @ValueSource(
            classes = {
                OutOfMemoryError.class,
                StackOverflowError.class,
                NoClassDefFoundError.class,
                AssertionError.class
            })
    void an_error_of_any_kind_exits_with_4(Class<? extends Error> kind) {
        Writer failing = new Writer() {
            @Override
            public void write(char[] text, int from, int length) {
                try {
                    throw kind.getDeclaredConstructor().newInstance();
                } catch (ReflectiveOperationException e) {
                    throw new IllegalStateException(e);
                }
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        StringWriter err = new StringWriter();
        int code = Leat.run(new String[] {"rules"}, new PrintWriter(failing), new PrintWriter(err));
        assertThat(code).isEqualTo(4);
        assertThat(err.toString()).startsWith("leat: ").contains(kind.getSimpleName());
    }

    @Test
    void what_an_error_says_is_cut() {
        Writer failing = new Writer() {
            @Override
            public void write(char[] text, int from, int length) {
                throw new OutOfMemoryError("x".repeat(50_000_000));
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        StringWriter err = new StringWriter();
        int code = Leat.run(new String[] {"rules"}, new PrintWriter(failing), new PrintWriter(err));
        assertThat(code).isEqualTo(4);
        assertThat(err.toString()).contains("OutOfMemoryError: xxx").endsWith("x…\n");
        assertThat(err.toString().length()).isLessThan(2000);
    }
}
