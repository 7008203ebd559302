package org.leat.file;

/**
 * Where each character of a YAML text value stands in its file: the value and its source are walked side by side, so that
 * indentation, folding and quoting do not matter.
 */
final class SourceWalk {

    private final String source;
    private final String file;
    private int line;
    private int column;
    private int at;
    private boolean single;

    /**
     * @param source the file
     * @param start where the value begins in it
     */
    SourceWalk(String source, Position start) {
        this.source = source;
        this.file = start.file();
        this.line = 1;
        this.column = 1;
        while (at < source.length() && (line < start.line() || column < start.column())) {
            step();
        }
    }

    /** {@return where the character at a line and column of the value stands, both from 1} */
    Position of(String value, int valueLine, int valueColumn) {
        char first = at < source.length() ? source.charAt(at) : ' ';
        if (first == '|' || first == '>') { // a block: it begins on the next line
            while (at < source.length() && source.charAt(at) != '\n') {
                step();
            }
        } else if (first == '"' || first == '\'') {
            single = first == '\'';
            step();
        }
        int atLine = 1;
        int atColumn = 1;
        for (int i = 0; i < value.length(); ) {
            int c = value.codePointAt(i);
            boolean blank = Character.isWhitespace(c);
            if (!blank) {
                blanks();
            }
            if (atLine > valueLine || (atLine == valueLine && atColumn >= valueColumn)) {
                break;
            }
            if (!blank) {
                escaped(c);
                step();
            }
            atColumn = c == '\n' ? 1 : atColumn + 1;
            atLine += c == '\n' ? 1 : 0;
            i += Character.charCount(c);
        }
        return new Position(file, line, column, line, column + 1);
    }

    private void blanks() {
        while (at < source.length() && Character.isWhitespace(source.charAt(at))) {
            step();
        }
    }

    /** A quoted character takes more room in the file than in the value. */
    private void escaped(int meant) {
        while (at < source.length()
                && source.codePointAt(at) != meant
                && source.charAt(at) == '\\'
                && source.charAt(at) != '\n') {
            step();
            if (at < source.length() && source.codePointAt(at) != meant) {
                step();
            }
        }
        if (single && meant == '\'' && source.startsWith("''", at)) {
            step();
        }
    }

    private void step() {
        if (at >= source.length()) {
            return;
        }
        int c = source.codePointAt(at);
        at += Character.charCount(c);
        column = c == '\n' ? 1 : column + 1;
        line += c == '\n' ? 1 : 0;
    }
}
