package org.leat.file;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.ElementPath;

/**
 * Where each value of a design stands in its file, by element path: {@code /penstock/sections[run]/pipe/sdr}. Items of
 * a list go by their name where they have one, else by their index from zero, see {@link ElementPath}.
 */
@API(status = API.Status.STABLE, since = "0.1")
public final class Positions {

    private final String file;
    private final Map<String, Position> byPath;
    private final String source;

    Positions(String file, Map<String, Position> byPath) {
        this(file, byPath, "");
    }

    /**
     * Takes the map as its own: nobody changes it from here on.
     *
     * @param source the whole file, for places within its values
     */
    Positions(String file, Map<String, Position> byPath, String source) {
        this.file = file;
        this.byPath = Collections.unmodifiableMap(byPath);
        this.source = source;
    }

    /** {@return positions that know nothing but the file's name, for a design built in code} */
    public static Positions unknown(String file) {
        return new Positions(file, Map.of());
    }

    /** {@return the design file's name as it was given} */
    public String file() {
        return file;
    }

    /** {@return every path that stands in the file, in the order of reading} */
    public Set<String> paths() {
        return byPath.keySet();
    }

    /** {@return where the value of exactly that path stands, or null if it is in no file} */
    public @Nullable Position exactly(String path) {
        return byPath.get(path);
    }

    /** {@return where the value of that path stands; of a path that is in no file, where its nearest parent stands} */
    public Position of(String path) {
        Position found = nearest(byPath, path);
        return found == null ? Position.startOf(file) : found;
    }

    /**
     * {@return where a character of a text stands, however the text is quoted, folded or indented in the file} Of a value
     * that is in no file, where its nearest parent stands.
     *
     * @param path of the text
     * @param text as it was read
     * @param line of the character in the text, from one
     * @param column of it in its line, in code points, from one
     */
    public Position within(String path, String text, int line, int column) {
        Position start = exactly(path);
        return start == null || source.isEmpty() ? of(path) : new SourceWalk(source, start).of(text, line, column);
    }

    static @Nullable Position nearest(Map<String, Position> byPath, String path) {
        String at = path;
        while (true) {
            Position found = byPath.get(at);
            if (found != null) {
                return found;
            }
            int cut = Math.max(at.lastIndexOf('/'), at.lastIndexOf('['));
            if (cut <= 0) {
                return byPath.get(ElementPath.ROOT);
            }
            at = at.substring(0, cut);
        }
    }
}
