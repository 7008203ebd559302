package org.leat.report;

import java.util.ArrayList;
import java.util.List;

/** Breaks text at blanks so that it fits a screen. */
public final class Wrapping {

    /** Columns of a line at most, and of what goes to no screen. */
    public static final int WIDEST = Columns.MOST;

    private Wrapping() {}

    /**
     * {@return a text with every line broken that is wider than a screen, what follows standing in further}
     *
     * @param width columns; taken as at least 40 and at most 100
     */
    public static String text(String text, int width) {
        List<String> lines = new ArrayList<>();
        for (String line : text.split("\n", -1)) {
            lines.addAll(Columns.wrapped(line, within(width)));
        }
        return String.join("\n", lines);
    }

    /**
     * {@return a page in Markdown, its prose broken so; rows of tables and blocks of code stay as they are, since they would
     * mean something else}
     *
     * @param width columns; taken as at least 40 and at most 100
     */
    public static String page(String markdown, int width) {
        List<String> lines = new ArrayList<>();
        boolean code = false;
        for (String line : markdown.split("\n", -1)) {
            boolean fence = line.startsWith("```");
            code ^= fence;
            if (code || fence || line.startsWith("|")) {
                lines.add(line);
            } else {
                lines.addAll(Columns.wrapped(line, within(width), line.startsWith("- ") ? 2 : 0));
            }
        }
        return String.join("\n", lines);
    }

    static int within(int width) {
        return Math.max(Columns.LEAST, Math.min(Columns.MOST, width));
    }
}
