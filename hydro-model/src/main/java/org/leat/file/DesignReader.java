package org.leat.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.design.Texts;

/**
 * Reads design files, YAML 1.2 or JSON. Bad content never throws: every problem found in one pass is in the
 * {@link Reading}. Memory and time are bounded whatever the file holds.
 */
@API(status = API.Status.STABLE, since = "0.1")
public final class DesignReader {

    /** The version of the file format that is read and written. */
    public static final int FORMAT = 1;

    private static final ValueType DESIGN = new ValueType.OfRecord(Design.class);

    private DesignReader() {}

    /** {@return what a file says; its parts files must lie in its folder or below} */
    public static Reading read(Path file) {
        return read(file, PartsFinder.within(folder(file)));
    }

    /** {@return what a file says, its parts files found by {@code parts}} */
    public static Reading read(Path file, PartsFinder parts) {
        String name = Texts.writable(file.toString());
        Problems problems = new Problems();
        try {
            if (!Files.isRegularFile(file)) {
                return unreadable(name, Files.exists(file) ? "an ordinary file" : "a file that exists", problems);
            }
            return read(Bytes.read(file), name, parts);
        } catch (IOException | SecurityException e) {
            return unreadable(name, "a file that may be read", problems);
        }
    }

    /** {@return what the content of a file says; parts files are refused} */
    public static Reading read(byte[] content, String name) {
        return read(content, name, PartsFinder.none());
    }

    /**
     * {@return what the content of a file says}
     *
     * @param name to be shown as the file's name
     */
    public static Reading read(byte[] content, String name, PartsFinder parts) {
        Problems problems = new Problems();
        String shown = Texts.writable(name);
        return read(SourceText.decode(content, shown, problems), shown, parts, problems);
    }

    /** {@return what a text says; parts files are refused} */
    public static Reading read(String text, String name) {
        return read(text, name, PartsFinder.none());
    }

    /**
     * {@return what a text says}
     *
     * @param name to be shown as the file's name
     */
    public static Reading read(String text, String name, PartsFinder parts) {
        Problems problems = new Problems();
        String shown = Texts.writable(name);
        return read(SourceText.check(text, shown, problems), shown, parts, problems);
    }

    private static Reading read(@Nullable String text, String name, PartsFinder finder, Problems problems) {
        if (text == null) {
            return new Reading(null, problems.sorted(), Positions.unknown(name), name, "");
        }
        NodeReader.Result nodes = NodeReader.read(text, name, problems);
        Node root = nodes.root();
        if (root == null) {
            return new Reading(null, problems.sorted(), Positions.unknown(name), name, text);
        }
        if (newer(root, problems)) {
            return new Reading(null, problems.sorted(), new Positions(name, Map.of()), name, text);
        }
        Parts parts = Parts.load(root, finder, problems);
        Binder binder = new Binder(problems, parts, nodes.broken());
        Object bound = binder.bind(DESIGN, root, ElementPath.ROOT);
        Design design = problems.none() && bound instanceof Design d ? d : null;
        return new Reading(design, problems.sorted(), new Positions(name, binder.positions()), name, text);
    }

    /** A file of another format has fields nobody here knows: only the format is told then. */
    static boolean newer(Node root, Problems problems) {
        if (root instanceof Node.Fields map
                && map.fields().get("format") instanceof Node.Scalar format
                && format.text().matches("\\d{1,9}(\\.\\d{1,9})?")
                && !format.text().equals(Integer.toString(FORMAT))) {
            problems.add(ProblemKind.UNSUPPORTED_FORMAT, format.at(), "/format", format.text(), "format: " + FORMAT);
            return true;
        }
        return false;
    }

    private static Reading unreadable(String name, String expected, Problems problems) {
        problems.add(ProblemKind.UNREADABLE, Position.startOf(name), ElementPath.ROOT, "", expected);
        return new Reading(null, problems.sorted(), Positions.unknown(name), name, "");
    }

    private static Path folder(Path file) {
        Path parent = file.getParent();
        return parent == null ? file.getFileSystem().getPath("") : parent;
    }
}
