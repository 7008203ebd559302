package org.leat.report;

import java.util.Locale;
import org.apiguardian.api.API;

/** Makes text of unknown origin harmless for a terminal. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class Plainly {

    private Plainly() {}

    /** {@return the text on one line, control characters and marks of writing direction as their code} */
    public static String of(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            switch (Character.getType(c)) {
                case Character.CONTROL,
                        Character.FORMAT,
                        Character.SURROGATE,
                        Character.PRIVATE_USE,
                        Character.LINE_SEPARATOR,
                        Character.PARAGRAPH_SEPARATOR -> out.append(String.format(Locale.ROOT, "\\u%04X", c));
                default -> out.appendCodePoint(c);
            }
        });
        return out.toString();
    }
}
