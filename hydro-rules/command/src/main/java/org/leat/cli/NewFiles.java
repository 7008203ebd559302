package org.leat.cli;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes files that are not there yet: all of them whole, or none. */
final class NewFiles {

    private NewFiles() {}

    /**
     * Writes each text into a new file of that name.
     *
     * @throws FileAlreadyExistsException if something stands at one of the names, be it a link that leads nowhere; its message is the
     *     name
     * @throws Outputs.CannotWriteException if one cannot be written; its message names it
     */
    static void write(Map<Path, String> texts) throws IOException {
        List<Path> made = new ArrayList<>();
        try {
            for (Map.Entry<Path, String> one : texts.entrySet()) {
                write(one.getKey(), one.getValue(), made);
            }
            made.clear();
        } finally {
            for (Path part : made) {
                Files.deleteIfExists(part);
            }
        }
    }

    private static void write(Path named, String text, List<Path> made) throws IOException {
        try (Writer to = Files.newBufferedWriter(
                named, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            made.add(named);
            to.write(text);
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (IOException e) {
            throw new Outputs.CannotWriteException(named, e, made.contains(named));
        }
    }
}
