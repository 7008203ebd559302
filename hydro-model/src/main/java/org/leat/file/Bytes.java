package org.leat.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file's bytes, never more than one beyond the limit. */
final class Bytes {

    private Bytes() {}

    static byte[] read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(SourceText.LIMIT + 1);
        }
    }
}
