package org.leat.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.IVersionProvider;

/** The version of the program, as the build wrote it. */
final class Version implements IVersionProvider {

    static String number() {
        try (InputStream in = Version.class.getResourceAsStream("version.txt")) {
            return in == null ? "unknown" : new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public String[] getVersion() {
        return new String[] {"leat " + number()};
    }
}
