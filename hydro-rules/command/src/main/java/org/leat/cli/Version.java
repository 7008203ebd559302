package org.leat.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.IVersionProvider;

/** The version of the program and where its documentation is, as the build wrote them. */
final class Version implements IVersionProvider {

    static String number() {
        String written = written("version.txt");
        return written == null ? "unknown" : written;
    }

    /** {@return the address of the documentation's site, ending with a slash; null where the release was given none} */
    static @Nullable String pages() {
        return address(written("pages.txt"));
    }

    static @Nullable String address(@Nullable String written) {
        return written == null || !written.startsWith("https://")
                ? null
                : written.endsWith("/") ? written : written + "/";
    }

    private static @Nullable String written(String file) {
        try (InputStream in = Version.class.getResourceAsStream(file)) {
            return in == null ? null : new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String[] getVersion() {
        return new String[] {"leat " + number()};
    }
}
