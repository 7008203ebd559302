package org.leat.file;

import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.design.AlsoWritten;
import org.leat.lazy.Once;

/** The ways in which a word may stand in a file: as it is written, and as people write it besides. */
final class WaysWritten {

    private static final String NUMBER = "[0-9]{1,15}(?:\\.[0-9]{1,33})?(?:[eE][+-]?[0-9]{1,4})?";

    private WaysWritten() {}

    /** {@return the expressions of a word and of what is also written for it} ECMA 262 without options, unanchored. */
    static List<String> expressions(String word, AnnotatedElement element) {
        List<String> all = new ArrayList<>();
        all.add(anyCase(word));
        AlsoWritten also = element.getAnnotation(AlsoWritten.class);
        if (also != null) {
            Stream.of(also.value()).map(WaysWritten::anyCase).forEach(all::add);
        }
        return List.copyOf(all);
    }

    /** {@return what the words stand for, by the patterns of their ways} Few files need one: most words stand as they are written. */
    static <T> Map<Pattern, T> patterns(Map<String, T> words, Function<T, AnnotatedElement> element) {
        Map<Pattern, T> patterns = new LinkedHashMap<>();
        words.forEach((word, meant) -> patterns.put(pattern(expressions(word, element.apply(meant))), meant));
        return Collections.unmodifiableMap(patterns);
    }

    static Pattern pattern(List<String> expressions) {
        return Pattern.compile(expressions.stream().collect(Collectors.joining("|", "(?:", ")")));
    }

    /** {@return the one of several whose pattern a text matches, or null} */
    static <T> @Nullable T meant(Once<Map<Pattern, T>> ways, String text) {
        if (text.length() > 40) {
            return null;
        }
        for (Map.Entry<Pattern, T> way : ways.get().entrySet()) {
            if (way.getKey().matcher(text).matches()) {
                return way.getValue();
            }
        }
        return null;
    }

    /** {@return the expression of a number with what may stand around it in a field, or null} Its one group is the number. */
    static @Nullable String aroundNumber(RecordComponent component) {
        AlsoWritten also = component.getAnnotation(AlsoWritten.class);
        return also == null
                ? null
                : Stream.of(also.value())
                        .map(way -> way.indexOf('#') == 0
                                ? "#" + " ?" + anyCase(way.substring(2))
                                : anyCase(way.substring(0, way.length() - 2)) + "[-_ ]?#")
                        .collect(Collectors.joining("|"));
    }

    /** {@return the number in a text with something around it, as {@link #aroundNumber} allows; null for any other text} */
    static @Nullable String number(@Nullable String around, String text) {
        if (around == null || text.length() > 40) {
            return null;
        }
        for (String way : around.split("\\|", -1)) {
            Matcher m = Pattern.compile(way.replace("#", "(" + NUMBER + ")")).matcher(text);
            if (m.matches()) {
                return m.group(1);
            }
        }
        return null;
    }

    /** {@return the expression for a schema} */
    static String schema(String around) {
        return "^(" + around.replace("#", NUMBER.replace("(?:", "(")) + ")$";
    }

    /** {@return an expression that matches a word in small and capital letters, its parts joined in any usual way} */
    private static String anyCase(String word) {
        return word.codePoints()
                .mapToObj(c -> {
                    String one = Character.toString(c);
                    if (c == '-' || c == '_' || c == ' ') {
                        return "[-_ ]?";
                    }
                    String upper = one.toUpperCase(java.util.Locale.ROOT);
                    String lower = one.toLowerCase(java.util.Locale.ROOT);
                    return upper.equals(lower) || upper.length() != 1 ? escaped(one) : "[" + lower + upper + "]";
                })
                .collect(Collectors.joining());
    }

    private static String escaped(String one) {
        return ".*+?^${}()|[]\\/".contains(one) ? "\\" + one : one;
    }
}
