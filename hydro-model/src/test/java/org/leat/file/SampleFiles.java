package org.leat.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The sound design file the tests of this package start from. */
final class SampleFiles {

    private SampleFiles() {}

    static String alderBeck() {
        return resource("alder-beck.yaml");
    }

    static String resource(String name) {
        try (InputStream in = SampleFiles.class.getResourceAsStream("/file/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
