package org.leat.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Standard output that remembers why it could not be written. */
final class StandardOutput extends OutputStream {

    private final OutputStream to = new FileOutputStream(FileDescriptor.out);
    private @Nullable IOException failure;

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        try {
            to.write(bytes, from, length);
        } catch (IOException e) {
            failure = e;
            throw e;
        }
    }

    /** {@return whether whoever read it has read enough and gone, as {@code head} does} */
    boolean readerGone() {
        String said = failure == null ? null : String.valueOf(failure.getMessage());
        return said != null && (said.contains("pipe") || said.contains("reset") || isPipe());
    }

    /** A pipe is never full: what cannot be written to it has no reader, in whatever language the system says so. */
    private static boolean isPipe() {
        try {
            String target = Files.readSymbolicLink(Path.of("/proc/self/fd/1")).toString();
            return target.startsWith("pipe:") || target.startsWith("socket:");
        } catch (IOException | InvalidPathException | UnsupportedOperationException e) {
            return false;
        }
    }
}
