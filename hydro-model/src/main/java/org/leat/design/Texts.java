package org.leat.design;

import java.util.Locale;
import java.util.regex.Pattern;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** What a text must be so that every kind of report can hold it. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class Texts {

    /** Characters of a name at most: names stand in paths, file names and table columns. */
    public static final int LONGEST_NAME = 100;

    /** Characters of any other text at most. */
    public static final int LONGEST = 20_000;

    private static final Pattern COMMAND = Pattern.compile(":(?=:)|#(?=#\\w*(?:\\[|$))");

    private Texts() {}

    /** {@return what is wrong with the text of a field, as what it should be; null where nothing is} */
    static @Nullable String expected(String field, String text) {
        int most = field.equals("name") ? LONGEST_NAME : LONGEST;
        if (text.length() > most) {
            return "at most " + most + " characters";
        }
        int bad = firstUnwritable(text);
        return bad < 0 ? null : "text without " + code(text.codePointAt(bad));
    }

    /** {@return the text, with what cannot be written replaced and no longer than a line} */
    static String shown(String text) {
        return writable(text.length() > LONGEST_NAME ? text.substring(0, LONGEST_NAME) + "\u2026" : text);
    }

    /**
     * {@return the index of the first character that not every kind of file can hold, or -1} Those are control characters
     * but for tab and line breaks, halves of a character (lone surrogates), and the codes that Unicode keeps free of any
     * character.
     */
    public static int firstUnwritable(String text) {
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            if (!writable(c)) {
                return i;
            }
            i += Character.charCount(c);
        }
        return -1;
    }

    /** {@return the text with the replacement character in place of what not every kind of file can hold} */
    public static String writable(String text) {
        if (firstUnwritable(text) < 0) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> out.appendCodePoint(writable(c) ? c : 0xFFFD));
        return out.toString();
    }

    /** {@return a character's code, as {@code U+D83D}} */
    public static String code(int c) {
        String hex = Integer.toHexString(c).toUpperCase(Locale.ROOT);
        return "U+" + "0".repeat(Math.max(0, 4 - hex.length())) + hex;
    }

    private static boolean writable(int c) {
        if (c < ' ') {
            return c == '\t' || c == '\n' || c == '\r';
        }
        boolean free = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
        return !free && !(c >= 0x7F && c < 0xA0 && c != 0x85) && !(c >= 0xD800 && c <= 0xDFFF);
    }

    /**
     * {@return the text, with what a build service takes for a command broken up: {@code ::error} where a line begins with it,
     * {@code ##[error]}, {@code ##vso[…]} and the like wherever they stand} Everywhere, for a line may be broken within a long word;
     * also {@code ##} at the end, for a bracket may follow.
     */
    public static String disarmed(String text) {
        return text.contains("::") || text.contains("##")
                ? COMMAND.matcher(text)
                        .replaceAll(command -> String.format(
                                Locale.ROOT, "\\\\u%04X", (int) command.group().charAt(0)))
                : text;
    }
}
