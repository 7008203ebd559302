package org.leat.file;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leat.design.ElementPath;
import org.leat.design.Texts;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** Bytes to text: at most a mebibyte, strict UTF-8, no characters that a text file cannot hold. */
final class SourceText {

    /** The largest file read, bytes. The parser's time grows with the square of a hostile file's size. */
    static final int LIMIT = 1 << 20;

    private SourceText() {}

    /** {@return the text without byte order mark, or null after a problem} */
    static @Nullable String decode(byte[] bytes, String file, Problems problems) {
        Position start = Position.startOf(file);
        if (bytes.length > LIMIT) {
            tooLarge("more than " + LIMIT + " bytes", file, problems);
            return null;
        }
        if (bytes.length >= 2 && (pair(bytes, 0xFE, 0xFF) || pair(bytes, 0xFF, 0xFE))) {
            problems.add(ProblemKind.NOT_UTF_8, start, ElementPath.ROOT, "UTF-16", "UTF-8");
            return null;
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (result.isError()) {
            String found = String.format(Locale.ROOT, "byte 0x%02X", bytes[in.position()] & 0xFF);
            problems.add(ProblemKind.NOT_UTF_8, position(text, text.length(), file), ElementPath.ROOT, found, "UTF-8");
            return null;
        }
        return check(text, file, problems);
    }

    /** {@return the text without byte order mark, or null after a problem} */
    static @Nullable String check(String given, String file, Problems problems) {
        String text = given.startsWith("\uFEFF") ? given.substring(1) : given;
        if (text.length() > LIMIT) {
            tooLarge(text.length() + " characters", file, problems);
            return null;
        }
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            if (c < ' ' ? c != '\n' && c != '\r' && c != '\t' : c > '~' && !StreamReader.isPrintable(c)) {
                String code = Texts.code(c);
                problems.add(ProblemKind.CONTROL_CHARACTER, position(text, i, file), ElementPath.ROOT, code, "text");
                return null;
            }
            i += Character.charCount(c);
        }
        return text;
    }

    static void tooLarge(String found, String file, Problems problems) {
        problems.add(
                ProblemKind.TOO_LARGE, Position.startOf(file), ElementPath.ROOT, found, "at most " + LIMIT + " bytes");
    }

    private static boolean pair(byte[] bytes, int first, int second) {
        return (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    private static Position position(String text, int index, String file) {
        int line = 1;
        int column = 1;
        for (int i = 0; i < index; ) {
            int c = text.codePointAt(i);
            boolean pairOfBreaks = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
            if (c == '\n' || (c == '\r' && !pairOfBreaks)) {
                line++;
                column = 1;
            } else if (!pairOfBreaks && !(i == 0 && c == 0xFEFF)) {
                column++;
            }
            i += Character.charCount(c);
        }
        return new Position(file, line, column, line, column + 1);
    }
}
