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

    Characters(Appendable out) {
        this.out = out;
    }

    @Override
    public void write(char[] chars, int offset, int length) throws IOException {
        int from = offset;
        for (int i = offset; i < offset + length; i++) {
            if (isHidden(chars[i])) {
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
