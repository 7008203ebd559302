package org.leat.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.function.Function;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.Texts;

/** Finds the parts files a design names. May be implemented by whoever keeps designs elsewhere than in files. */
@API(status = API.Status.STABLE, since = "0.1")
@FunctionalInterface
public interface PartsFinder {

    /**
     * {@return what is under that name}
     *
     * @param name as the design file has it
     */
    Found find(String name);

    /** What came of looking. */
    sealed interface Found {}

    /**
     * The parts file.
     *
     * @param bytes its content
     * @param displayName its name for positions
     */
    @SuppressWarnings("ArrayRecordComponent") // handed on once, never compared
    record Content(byte[] bytes, String displayName) implements Found {}

    /** There is none, or it cannot be read; {@code why} in a few words. */
    record Missing(String why) implements Found {}

    /** It lies outside the folder that parts may come from. */
    record Outside() implements Found {}

    /** Parts files cannot be looked up here. */
    record NotAllowed() implements Found {}

    /** {@return no parts at all} */
    static PartsFinder none() {
        return name -> new NotAllowed();
    }

    /** {@return parts by a function from name to text; null for none} */
    static PartsFinder of(Function<String, @Nullable String> texts) {
        return name -> {
            String text = texts.apply(name);
            return text == null
                    ? new Missing("no such parts file")
                    : new Content(text.getBytes(StandardCharsets.UTF_8), name);
        };
    }

    /** {@return parts in a folder and below it; links are followed before that is judged} */
    static PartsFinder within(Path folder) {
        return name -> find(folder, name, false);
    }

    /** {@return parts anywhere, relative to a folder} */
    static PartsFinder anywhere(Path folder) {
        return name -> find(folder, name, true);
    }

    private static Found find(Path folder, String name, boolean anywhere) {
        Path file;
        try {
            file = folder.resolve(name);
        } catch (InvalidPathException e) {
            return new Missing("not a file name");
        }
        try {
            Path home = folder.toAbsolutePath().normalize();
            if (!anywhere && !file.toAbsolutePath().normalize().startsWith(home)) {
                return new Outside();
            }
            if (!Files.isRegularFile(file)) {
                return new Missing("no such file");
            }
            if (!anywhere && !file.toRealPath().startsWith(home.toRealPath())) {
                return new Outside();
            }
            return new Content(Bytes.read(file), Texts.writable(file.toString()));
        } catch (IOException e) {
            return new Missing("cannot be opened");
        }
    }
}
