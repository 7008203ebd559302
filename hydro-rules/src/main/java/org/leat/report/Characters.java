package org.leat.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.CharBuffer;
import java.util.Locale;

/**
 * A writer of JSON or XML that hands characters on and leaves what it writes to open. What a terminal would obey or a reader not see,
 * marks of direction and the like, is told as its code: it can only
 * stand inside a text.
 */
final class Characters extends Writer {

    private final Appendable out;
    private final boolean json;
    private char before;

    private Characters(Appendable out, boolean json) {
        this.out = out;
        this.json = json;
    }

    static Characters ofXml(Appendable out) {
        return new Characters(out, false);
    }

    /** Of {@code ##} the second is told as its code too: a build service takes {@code ##[error]} for a command wherever it stands. */
    static Characters ofJson(Appendable out) {
        return new Characters(out, true);
    }

    @Override
    public void write(char[] chars, int offset, int length) throws IOException {
        int from = offset;
        for (int i = offset; i < offset + length; i++) {
            boolean second = json && chars[i] == '#' && before == '#';
            before = chars[i];
            if (second || isHidden(chars[i])) {
                out.append(CharBuffer.wrap(chars, from, i - from));
                out.append(String.format(Locale.ROOT, "\\u%04x", (int) chars[i]));
                from = i + 1;
            }
        }
        out.append(CharBuffer.wrap(chars, from, offset + length - from));
    }

    private static boolean isHidden(char c) {
        if (c < 0x7f) {
            return false;
        }
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> true;
            default -> c >= 0xfffe || (c >= 0xfdd0 && c <= 0xfdef);
        };
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
}
