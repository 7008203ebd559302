package org.leat.cli;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** Puts a written file in another's place in one step, so that no half of it is ever seen. */
final class Replacing {

    private static final Set<PosixFilePermission> USUAL = PosixFilePermissions.fromString("rw-r--r--");

    private Replacing() {}

    /**
     * {@return the file that a name leads to: itself, or what a link leads to}
     *
     * @throws IOException if something else than an ordinary file stands there, or a link leads nowhere
     */
    static Path target(Path named) throws IOException {
        if (!Files.exists(named, LinkOption.NOFOLLOW_LINKS)) {
            return named;
        }
        if (!Files.exists(named)) {
            throw new IOException("the link leads nowhere");
        }
        if (!Files.isRegularFile(named)) {
            throw new IOException(Files.isDirectory(named) ? "it is a folder" : "it is no ordinary file");
        }
        return named.toRealPath();
    }

    /** Moves a file to its name; who may read and write what stood there before stays as it was. */
    static void file(Path written, Path named) throws IOException {
        Path target = target(named);
        try {
            Files.setPosixFilePermissions(
                    written, Files.exists(target) ? Files.getPosixFilePermissions(target) : USUAL);
        } catch (UnsupportedOperationException e) {
            // a file system without such permissions: the folder's rules hold
        }
        try {
            Files.move(written, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(written, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
