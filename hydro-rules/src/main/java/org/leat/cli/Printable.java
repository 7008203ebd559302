package org.leat.cli;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Text of unknown origin for a terminal: control characters and marks of writing direction as their code. */
final class Printable {

    private Printable() {}

    static String of(@Nullable String text) {
        StringBuilder out = new StringBuilder();
        String given = text == null ? "" : text;
        given.codePoints().forEach(c -> {
            int type = Character.getType(c);
            if (type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE) {
                out.append(String.format(Locale.ROOT, "\\u%04X", c));
            } else {
                out.appendCodePoint(c);
            }
        });
        return out.toString();
    }

    static String of(Throwable e) {
        String said = e.getMessage();
        return of(e.getClass().getSimpleName() + (said == null ? "" : ": " + said));
    }
}
