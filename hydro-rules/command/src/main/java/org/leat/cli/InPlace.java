package org.leat.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Writes a file again, in one step, with its permissions, and only if it is still as it was read. */
final class InPlace {

    private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private InPlace() {}

    /**
     * Replaces what a file holds; of a link, what it leads to.
     *
     * @param read the bytes that the text was made from; a byte order mark of theirs stays
     * @throws IOException if the file may not be written, holds something else by now, or cannot be written; it is as it
     *     was then
     */
    static void write(Path named, byte[] read, String text) throws IOException {
        Path file = named.toRealPath();
        if (!Files.isWritable(file)) {
            throw new IOException("it may not be written");
        }
        Path beside = Files.createTempFile(file.getParent(), ".leat-", ".part");
        try {
            try (OutputStream to = Files.newOutputStream(beside)) {
                if (read.length >= MARK.length && Arrays.equals(read, 0, MARK.length, MARK, 0, MARK.length)) {
                    to.write(MARK);
                }
                to.write(text.getBytes(StandardCharsets.UTF_8));
            }
            if (!Arrays.equals(read, Files.readAllBytes(file))) {
                throw new IOException("it has changed meanwhile");
            }
            Replacing.file(beside, file);
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
