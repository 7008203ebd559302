package org.leat.report;

import java.util.ArrayList;
import java.util.List;

/** Text by the columns that it takes on a screen. */
final class Columns {

    /** The widest that a line is where nobody says how wide the screen is, and the widest at all. */
    static final int MOST = 100;

    /** Narrower than this no table can be read. */
    static final int LEAST = 40;

    private static final int HANGING = 4;
    private static final String CUT_OFF = "\u2026";

    /** Characters of a unit with what may follow it at once, such as {@code kWh).}. */
    private static final int LONGEST_UNIT = 6;

    private Columns() {}

    /** {@return how many columns a text takes; escape sequences take none, wide letters two} */
    static int of(String text) {
        int columns = 0;
        for (int i = 0; i < text.length(); ) {
            int end = escapeEnd(text, i);
            if (end > i) {
                i = end;
                continue;
            }
            int c = text.codePointAt(i);
            columns += of(c);
            i += Character.charCount(c);
        }
        return columns;
    }

    private static int of(int c) {
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
            return 0;
        }
        boolean wide = (c >= 0x1100 && c <= 0x115F)
                || (c >= 0x2E80 && c <= 0xA4CF)
                || (c >= 0xAC00 && c <= 0xD7A3)
                || (c >= 0xF900 && c <= 0xFAFF)
                || (c >= 0xFE30 && c <= 0xFE6F)
                || (c >= 0xFF00 && c <= 0xFF60)
                || (c >= 0xFFE0 && c <= 0xFFE6)
                || (c >= 0x1F300 && c <= 0x1FAFF)
                || (c >= 0x20000 && c <= 0x3FFFD);
        return wide ? 2 : 1;
    }

    /** {@return where an escape sequence that begins there ends; the same place where none does} */
    private static int escapeEnd(String text, int at) {
        if (text.charAt(at) != '\u001b' || at + 1 >= text.length() || text.charAt(at + 1) != '[') {
            return at;
        }
        int m = text.indexOf('m', at);
        return m < 0 ? at : m + 1;
    }

    /** {@return lines broken at blanks so that none is wider than the widest; prose to its edge, what stands in further hanging} */
    static List<String> wrapped(List<String> lines) {
        return lines.stream()
                .flatMap(line -> (line.startsWith(" ") ? wrapped(line, MOST) : wrapped(line, MOST, 0)).stream())
                .toList();
    }

    /** {@return a line broken at blanks so that none is wider; what follows the first stands in further} */
    static List<String> wrapped(String line, int width) {
        int indent = 0;
        while (indent < line.length() && line.charAt(indent) == ' ') {
            indent++;
        }
        return wrapped(line, width, Math.min(indent + HANGING, width / 2));
    }

    /** {@return a line broken at blanks so that none is wider; what follows the first stands in by so many columns} */
    static List<String> wrapped(String line, int width, int hanging) {
        List<String> lines = new ArrayList<>();
        String rest = line;
        while (of(rest) > width) {
            int cut = cut(rest, width, lines.isEmpty() ? leading(rest) : hanging);
            lines.add(rest.substring(0, cut).stripTrailing());
            rest = " ".repeat(hanging) + rest.substring(cut).stripLeading();
        }
        lines.add(rest.stripTrailing());
        return lines;
    }

    /** {@return a line broken as {@link #wrapped}, cut off with a mark where that makes more lines than so many} */
    static List<String> wrapped(String line, int width, int hanging, int most) {
        List<String> lines = wrapped(line, width, hanging);
        if (lines.size() <= most) {
            return lines;
        }
        List<String> kept = new ArrayList<>(lines.subList(0, most));
        String last = kept.get(most - 1);
        while (of(last) >= width) {
            last = last.substring(0, last.offsetByCodePoints(last.length(), -1));
        }
        kept.set(most - 1, last + CUT_OFF);
        return kept;
    }

    private static int leading(String line) {
        return line.length() - line.stripLeading().length();
    }

    /** {@return whether a blank stands between a number and its unit} */
    private static boolean isBeforeUnit(String line, int blank) {
        if (blank == 0 || !Character.isDigit(line.charAt(blank - 1)) || blank + 1 >= line.length()) {
            return false;
        }
        int end = blank + 1;
        while (end < line.length() && line.charAt(end) != ' ') {
            end++;
        }
        char first = line.charAt(blank + 1);
        return end - blank <= LONGEST_UNIT && (Character.isLetter(first) || first == '%' || first == '°');
    }

    /** {@return where to break: behind the last blank that fits, or in the midst of a word that is too long} */
    private static int cut(String line, int width, int from) {
        int columns = 0;
        int blank = -1;
        int i = 0;
        while (i < line.length()) {
            int end = escapeEnd(line, i);
            if (end > i) {
                i = end;
                continue;
            }
            int c = line.codePointAt(i);
            if (columns + of(c) > width) {
                break;
            }
            columns += of(c);
            if (c == ' ' && i > from && !isBeforeUnit(line, i)) {
                blank = i;
            }
            i += Character.charCount(c);
        }
        if (i < line.length() && line.charAt(i) == ' ' && !isBeforeUnit(line, i)) {
            return i;
        }
        return blank > from ? blank : i;
    }
}
