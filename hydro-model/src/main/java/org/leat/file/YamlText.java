package org.leat.file;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.resolver.CoreScalarResolver;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** A tree of plain values as YAML: a field on a line, short mappings and lists of plain values in brackets. */
final class YamlText {

    private static final CoreScalarResolver TYPES = new CoreScalarResolver(false);
    /** Texts that mean themselves without quotation marks wherever they stand. */
    private static final Pattern BARE =
            Pattern.compile("(?:-(?=\\d))?[\\p{L}\\p{N}°µΩ+][\\p{L}\\p{N} ._/%°µΩ²³·±()+-]*");

    private static final int WIDTH = 100;

    private final StringBuilder out = new StringBuilder();

    private YamlText() {}

    static String of(JsonNode tree) {
        YamlText text = new YamlText();
        text.fields(tree, 0, false);
        return text.out.toString();
    }

    /** {@return one value as YAML, on one line} */
    static String scalar(JsonNode value) {
        return value.isTextual()
                ? text(value.textValue())
                : value.isBigDecimal() ? value.decimalValue().toPlainString() : value.asText();
    }

    /** {@return one value as YAML, on one line} A text is quoted in any case if that is asked, as JSON needs it. */
    static String scalar(JsonNode value, boolean quotes) {
        return quotes && value.isTextual() ? quoted(value.textValue()) : scalar(value);
    }

    /** {@return a value of any shape as YAML, on one line} */
    static String inBrackets(JsonNode value) {
        List<String> parts = new ArrayList<>();
        if (value.isArray()) {
            value.forEach(item -> parts.add(inBrackets(item)));
            return parts.isEmpty() ? "[]" : "[ " + String.join(", ", parts) + " ]";
        }
        if (value.isObject()) {
            value.properties().forEach(f -> parts.add(text(f.getKey()) + ": " + inBrackets(f.getValue())));
            return parts.isEmpty() ? "{}" : "{ " + String.join(", ", parts) + " }";
        }
        return scalar(value);
    }

    /** @param begun whether the first field goes on in the line already begun */
    private void fields(JsonNode tree, int indent, boolean begun) {
        boolean first = begun;
        for (Map.Entry<String, JsonNode> field : tree.properties()) {
            if (!first) {
                out.append(" ".repeat(indent));
            }
            first = false;
            out.append(text(field.getKey())).append(':');
            value(field.getValue(), indent);
        }
    }

    private void value(JsonNode value, int indent) {
        String line = inOneLine(value, indent > 0);
        if (line != null && column() + line.length() < WIDTH) {
            out.append(' ').append(line).append('\n');
        } else if (value.isObject()) {
            out.append('\n');
            fields(value, indent + 2, false);
        } else if (value.isArray()) {
            out.append('\n');
            for (JsonNode item : value) {
                item(item, indent + 2);
            }
        } else {
            out.append(' ').append(scalar(value)).append('\n');
        }
    }

    private void item(JsonNode item, int indent) {
        out.append(" ".repeat(indent)).append("- ");
        String line = inOneLine(item, true);
        if (line != null && (!item.isObject() || column() + line.length() < WIDTH)) {
            out.append(line).append('\n');
        } else {
            fields(item, indent + 2, true);
        }
    }

    private int column() {
        return out.length() - out.lastIndexOf("\n");
    }

    /** A value that fits on a line: a plain one, or a bracket of plain ones; else null. */
    private static @Nullable String inOneLine(JsonNode value, boolean mappings) {
        if (value.isValueNode()) {
            return scalar(value);
        }
        List<String> parts = new ArrayList<>();
        for (JsonNode item : value) {
            if (!item.isValueNode()) {
                return null;
            }
        }
        if (value.isArray()) {
            value.forEach(item -> parts.add(scalar(item)));
            return "[" + String.join(", ", parts) + "]";
        }
        if (!mappings || value.isEmpty()) {
            return value.isEmpty() ? "{}" : null;
        }
        value.properties().forEach(f -> parts.add(text(f.getKey()) + ": " + scalar(f.getValue())));
        return "{ " + String.join(", ", parts) + " }";
    }

    private static String text(String text) {
        boolean bare = BARE.matcher(text).matches()
                && !text.endsWith(" ")
                && TYPES.resolve(text, true).equals(Tag.STR);
        return bare ? text : quoted(text);
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            switch (c) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\t' -> quoted.append("\\t");
                case '\r' -> quoted.append("\\r");
                default -> {
                    if (c < ' '
                            || (c > '~' && (!StreamReader.isPrintable(c) || Character.isISOControl(c)))
                            || Character.getType(c) == Character.FORMAT // marks of direction: an editor would obey
                            || c == 0x2028
                            || c == 0x2029) {
                        quoted.append(String.format(Locale.ROOT, c > 0xFFFF ? "\\U%08x" : "\\u%04x", c));
                    } else {
                        quoted.appendCodePoint(c);
                    }
                }
            }
        });
        return quoted.append('"').toString();
    }
}
