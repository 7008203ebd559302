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
        int columns = rows.stream().mapToInt(List::size).max().orElse(0);
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < row.size(); i++) {
                widths[i] = Math.max(widths[i], length(row.get(i)));
            }
        }
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.size(); i++) {
                String pad = " ".repeat(widths[i] - length(row.get(i)));
                line.append(i == 0 ? row.get(i) + pad : "  " + pad + row.get(i));
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
