package org.leat.report;

import java.util.Locale;
import org.apiguardian.api.API;
import org.leat.design.Texts;

/** Makes text of unknown origin harmless for a terminal and for a document. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class PlainText {

    private PlainText() {}

    /**
     * {@return the text on one line, control characters, marks of writing direction and what is no character as their code}
     * What a build service takes for a command, {@code ::error}, {@code ##[error]} and {@code ##vso[…]}, is broken up.
     */
    public static String of(String text) {
        StringBuilder out = new StringBuilder(text.length());
        Texts.disarmed(text).codePoints().forEach(c -> {
            switch (Character.getType(c)) {
                case Character.CONTROL,
                        Character.FORMAT,
                        Character.SURROGATE,
                        Character.PRIVATE_USE,
                        Character.LINE_SEPARATOR,
                        Character.PARAGRAPH_SEPARATOR -> out.append(String.format(Locale.ROOT, "\\u%04X", c));
                default -> {
                    if (isNoCharacter(c)) {
                        out.append(String.format(Locale.ROOT, "\\u%04X", c));
                    } else {
                        out.appendCodePoint(c);
                    }
                }
            }
        });
        return out.toString();
    }

    /** Code points that Unicode sets aside for ever and no XML document can hold: the last two of each plane, and 32 more. */
    private static boolean isNoCharacter(int c) {
        return (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
    }
}
