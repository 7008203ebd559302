package org.leat.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leat.design.ElementPath;
import org.leat.design.Texts;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.resolver.CoreScalarResolver;

/**
 * A table of comma-separated values, or of values parted by semicolons or tabs, as a list of mappings: the first line names the
 * fields, each further line is one item. A unit in brackets behind a name counts for all numbers below it. Cells left empty are left
 * out, lines that begin with {@code #} too. Between semicolons a table may be written with decimal commas throughout.
 */
final class TableNodes {

    private static final Pattern HEAD = Pattern.compile("\\s*([^\\[(]*?)\\s*(?:[\\[(]([^\\])]*)[\\])])?\\s*");
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?([eE][+-]?\\d+)?");
    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d+");
    private static final Pattern DECIMALS = Pattern.compile("\\d{1,6}");
    private static final CoreScalarResolver TYPES = new CoreScalarResolver(false);

    /** A number with a decimal comma, and one that is no group of thousands. */
    private static final Pattern COMMA = Pattern.compile("([+-]?\\d+),(\\d+(?:[eE][+-]?\\d+)?)");

    private static final Pattern SURELY_DECIMAL = Pattern.compile("[+-]?\\d+,(?:\\d{1,2}|\\d{4,})");
    private static final Pattern POINT = Pattern.compile("[+-]?\\d+\\.\\d+");

    private final String file;
    private final Problems problems;

    /** Whether the table is written with decimal commas, as a spreadsheet of many countries writes it between semicolons. */
    private boolean decimalCommas;

    private TableNodes(String file, Problems problems) {
        this.file = file;
        this.problems = problems;
    }

    private record Cell(String text, Position at) {}

    private record Column(String name, String unit, Position at) {}

    /**
     * {@return a mapping with {@code format: 1} and the rows as a list; null where there are none, which is told}
     *
     * @param list the field that holds the rows
     */
    static Node.@Nullable Fields read(String text, String file, String list, Problems problems) {
        return new TableNodes(file, problems).whole(text, list);
    }

    private Node.@Nullable Fields whole(String text, String list) {
        Position start = Position.startOf(file);
        List<Column> columns = List.of();
        Map<String, Position> keys = new LinkedHashMap<>();
        char parting = ',';
        List<Node> rows = new ArrayList<>();
        String[] lines = text.split("\r\n|\r|\n", -1);
        for (int i = 0; i < lines.length; i++) {
            if (lines[i].isBlank() || lines[i].startsWith("#")) {
                continue;
            }
            if (columns.isEmpty()) {
                parting = parting(lines[i]);
                columns = columns(cells(lines[i], i + 1, parting));
                columns.forEach(column -> keys.put(column.name(), column.at()));
                decimalCommas = parting == ';' && decimalCommas(lines, i + 1);
            } else {
                rows.add(row(cells(lines[i], i + 1, parting), columns, keys, i + 1, parting));
            }
        }
        if (rows.isEmpty()) {
            problems.add(ProblemKind.EMPTY, start, ElementPath.ROOT, "", "rows below the names of the fields");
            return null;
        }
        Map<String, Node> fields = new LinkedHashMap<>();
        fields.put("format", new Node.Scalar("1", Tag.INT, false, start));
        fields.put(list, new Node.Items(rows, start));
        return new Node.Fields(fields, Map.of(), start);
    }

    /** Only where some number cannot be thousands and none has a point: one comma or the other would be read wrong. */
    private static boolean decimalCommas(String[] lines, int from) {
        boolean decimals = false;
        for (int i = from; i < lines.length; i++) {
            for (String cell : lines[i].startsWith("#") ? new String[0] : lines[i].split(";", -1)) {
                String text = cell.replace('"', ' ').strip();
                if (POINT.matcher(text).matches()) {
                    return false;
                }
                decimals |= SURELY_DECIMAL.matcher(text).matches();
            }
        }
        return decimals;
    }

    private String pointed(String text) {
        Matcher number = COMMA.matcher(text);
        return decimalCommas && number.matches() ? number.group(1) + "." + number.group(2) : text;
    }

    private static char parting(String line) {
        return line.indexOf('\t') >= 0 ? '\t' : line.indexOf(';') >= 0 ? ';' : ',';
    }

    private List<Cell> cells(String line, int number, char parting) {
        List<Cell> cells = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        boolean quoted = false;
        int begin = 0;
        for (int i = 0; i <= line.length(); i++) {
            char c = i < line.length() ? line.charAt(i) : parting;
            if (quoted && i < line.length()) {
                boolean twice = c == '"' && i + 1 < line.length() && line.charAt(i + 1) == '"';
                if (twice) {
                    text.append('"');
                    i++;
                } else if (c == '"') {
                    quoted = false;
                } else {
                    text.append(c);
                }
            } else if (c == '"') {
                quoted = true;
            } else if (c == parting) {
                int from = line.codePointCount(0, begin) + 1;
                int to = line.codePointCount(0, i) + 1;
                String shown = Texts.writable(text.toString().strip());
                cells.add(new Cell(shown, new Position(file, number, from, number, Math.max(from + 1, to))));
                text.setLength(0);
                begin = i + 1;
            } else {
                text.append(c);
            }
        }
        return cells;
    }

    private List<Column> columns(List<Cell> head) {
        List<Column> columns = new ArrayList<>();
        for (Cell cell : head) {
            Matcher named = HEAD.matcher(cell.text());
            boolean matches = named.matches();
            String unit = matches && named.group(2) != null ? named.group(2).strip() : "";
            columns.add(new Column(matches ? named.group(1) : cell.text(), unit, cell.at()));
        }
        return columns;
    }

    /** {@return a hint where two neighbours may be one number with a decimal comma, which falls in two} */
    private static String commas(List<Cell> cells, char parting) {
        for (int i = 0; parting == ',' && i + 1 < cells.size(); i++) {
            String whole = cells.get(i).text();
            String decimals = cells.get(i + 1).text();
            if (WHOLE.matcher(whole).matches() && DECIMALS.matcher(decimals).matches()) {
                return "; a comma parts values: a number is written with a point, " + whole + "." + decimals
                        + " and not " + whole + "," + decimals;
            }
        }
        return "";
    }

    private Node.Fields row(
            List<Cell> cells, List<Column> columns, Map<String, Position> keys, int number, char parting) {
        Map<String, Node> fields = new LinkedHashMap<>();
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = cells.get(i);
            if (cell.text().isEmpty()) {
                continue;
            }
            if (i >= columns.size()) {
                problems.add(
                        ProblemKind.WRONG_SHAPE,
                        cell.at(),
                        ElementPath.ROOT,
                        cell.text(),
                        columns.size() + " values in a line, as the first line names" + commas(cells, parting));
                break;
            }
            Column column = columns.get(i);
            String value = pointed(cell.text());
            boolean bare = !column.unit().isEmpty() && NUMBER.matcher(value).matches();
            String text = bare ? value + " " + column.unit() : value;
            // a number with its unit is nothing but text
            Tag tag = bare ? Tag.STR : TYPES.resolve(text, true);
            fields.put(column.name(), new Node.Scalar(text, tag, false, cell.at()));
        }
        return new Node.Fields(fields, keys, new Position(file, number, 1, number, 2));
    }
}
