package org.leat.report;

import java.util.ArrayList;
import java.util.List;

/** Columns of text, the first to the left, the rest to the right. */
final class Table {

    private final List<List<String>> rows = new ArrayList<>();

    void row(String... cells) {
        rows.add(List.of(cells));
    }

    /** {@return the lines, without line ends} */
    List<String> lines() {
        int[] widths = widths();
        return lines(widths, 1, widths.length);
    }

    /** {@return the lines, none wider: columns that do not fit follow below, each time with the first} */
    List<String> lines(int width) {
        int[] widths = widths();
        List<String> lines = new ArrayList<>();
        for (int from = 1; from < widths.length || lines.isEmpty(); ) {
            int to = from;
            int taken = widths.length == 0 ? 0 : widths[0];
            while (to < widths.length && (to == from || taken + 2 + widths[to] <= width)) {
                taken += 2 + widths[to];
                to++;
            }
            lines.addAll(lines(widths, from, to));
            from = Math.max(to, from + 1);
        }
        return lines;
    }

    private int[] widths() {
        int columns = rows.stream().mapToInt(List::size).max().orElse(0);
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                widths[i] = Math.max(widths[i], Columns.of(row.get(i)));
            }
        }
        return widths;
    }

    private List<String> lines(int[] widths, int from, int to) {
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder(row.get(0)).append(pad(widths[0], row.get(0)));
            for (int i = from; i < Math.min(to, row.size()); i++) {
                line.append("  ").append(pad(widths[i], row.get(i))).append(row.get(i));
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    private static String pad(int width, String text) {
        return " ".repeat(width - Columns.of(text));
    }
}
