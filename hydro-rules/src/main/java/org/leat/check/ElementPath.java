package org.leat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A place in a design, written {@code /penstock/sections[run]/pipe/sdr}: the file's field names, and for an item of a
 * list its name or, where items have none, its number counted from 0.
 */
final class ElementPath {

    private ElementPath() {}

    /**
     * One step down.
     *
     * @param field as the file spells it
     * @param item name or number of an item of the list there; null for the field itself
     */
    record Step(String field, @Nullable String item) {
        /** {@return the record component's name} */
        String component() {
            StringBuilder name = new StringBuilder();
            for (String word : field.split("-", -1)) {
                name.append(
                        name.isEmpty() || word.isEmpty()
                                ? word
                                : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
            }
            return name.toString();
        }
    }

    /**
     * {@return the steps of a path, none for ""}
     *
     * @throws IllegalArgumentException if it is not one
     */
    static List<Step> steps(String path) {
        List<Step> steps = new ArrayList<>();
        int at = 0;
        while (at < path.length()) {
            if (path.charAt(at) != '/') {
                throw new IllegalArgumentException("not a path: " + path);
            }
            int end = at + 1;
            while (end < path.length() && path.charAt(end) != '/' && path.charAt(end) != '[') {
                end++;
            }
            String field = path.substring(at + 1, end);
            String item = null;
            if (end < path.length() && path.charAt(end) == '[') {
                int close = end;
                do {
                    close = path.indexOf(']', close + 1);
                    if (close < 0) {
                        throw new IllegalArgumentException("not a path: " + path);
                    }
                } while (close + 1 < path.length() && path.charAt(close + 1) != '/');
                item = path.substring(end + 1, close);
                end = close + 1;
            }
            if (field.isEmpty()) {
                throw new IllegalArgumentException("not a path: " + path);
            }
            steps.add(new Step(field, item));
            at = end;
        }
        return steps;
    }

    /** {@return the path one step up, null above the whole design} */
    static @Nullable String parent(String path) {
        if (path.isEmpty()) {
            return null;
        }
        if (path.endsWith("]")) {
            int open = path.lastIndexOf('[');
            return open > 0 ? path.substring(0, open) : "";
        }
        return path.substring(0, Math.max(0, path.lastIndexOf('/')));
    }
}
