package org.leat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leat.design.ElementPath;

/**
 * A place in a design, written {@code /penstock/sections[run]/pipe/sdr}: the file's field names, and for an item of a
 * list its name or, where items have none, its number counted from 0. See {@link ElementPath}.
 */
final class PathSteps {

    private static final Pattern STEP = Pattern.compile("/([^/\\[\\]]+)(?:\\[([^/\\[\\]]*)])?");

    private PathSteps() {}

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
     * {@return the steps of a path, none for the whole design}
     *
     * @throws IllegalArgumentException if it is not one
     */
    static List<Step> steps(String path) {
        if (path.equals(ElementPath.ROOT)) {
            return List.of();
        }
        List<Step> steps = new ArrayList<>();
        Matcher m = STEP.matcher(path);
        int at = 0;
        while (m.find() && m.start() == at) {
            String item = m.group(2);
            steps.add(new Step(m.group(1), item == null ? null : unescaped(item)));
            at = m.end();
        }
        if (at != path.length() || steps.isEmpty()) {
            throw new IllegalArgumentException("not a path: " + path);
        }
        return steps;
    }

    private static String unescaped(String name) {
        return name.replace("~3", "]").replace("~2", "[").replace("~1", "/").replace("~0", "~");
    }
}
