package org.leat.file;

import java.lang.reflect.RecordComponent;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leat.design.Design;

/** The names of a file's outermost fields, found without reading it as YAML: a broken file has them too. */
final class OutermostFields {

    private static final Pattern FIELD = Pattern.compile("(?m)^[\"']?([a-z][a-z-]*)[\"']?[ \\t]*:");

    private OutermostFields() {}

    /** {@return whether one of them is a part of a plant} */
    static boolean holdPlant(String text) {
        Set<String> parts = parts();
        return names(text).stream().anyMatch(parts::contains);
    }

    /** Fields of a design that hold a record of their own; a name or notes say nothing about what a file is. */
    private static Set<String> parts() {
        Set<String> parts = new TreeSet<>();
        for (RecordComponent component : Design.class.getRecordComponents()) {
            Class<?> type = component.getType();
            if (type.isRecord() || type.isSealed()) {
                parts.add(Names.ofComponent(component.getName()));
            }
        }
        return parts;
    }

    static Set<String> names(String text) {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        Set<String> names = new TreeSet<>();
        if (plain.stripLeading().startsWith("{")) {
            inBraces(plain, names);
            return names;
        }
        Matcher m = FIELD.matcher(plain);
        while (m.find()) {
            names.add(m.group(1));
        }
        return names;
    }

    /** JSON: texts in quotation marks, one brace deep, before a colon. */
    private static void inBraces(String text, Set<String> names) {
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '{' || c == '[') {
                depth++;
            } else if (c == '}' || c == ']') {
                depth--;
            } else if (c == '"') {
                int end = i + 1;
                while (end < text.length() && text.charAt(end) != '"') {
                    end += text.charAt(end) == '\\' ? 2 : 1;
                }
                if (depth == 1 && colonFollows(text, end + 1)) {
                    names.add(text.substring(i + 1, Math.min(end, text.length())));
                }
                i = end;
            }
        }
    }

    private static boolean colonFollows(String text, int from) {
        int at = from;
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
        return at < text.length() && text.charAt(at) == ':';
    }
}
