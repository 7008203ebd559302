package org.leat.rulefile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leat.expression.Expression;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.TradeUnits;

/** The placeholders of a text, held against what there is to fill them. */
final class Placeholders {

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}:,]*)(?::([^,{}]*))?(?:,([^{}]*))?}");

    private Placeholders() {}

    /** {@return what is wrong with a text: what was found, with what could stand there} */
    static Map<String, String> wrong(String text, Map<String, Expression> shown, @Nullable Expression value) {
        Map<String, String> wrong = new LinkedHashMap<>();
        Matcher m = PLACEHOLDER.matcher(text);
        while (m.find()) {
            String name = m.group(1);
            String unit = m.group(2);
            boolean compared = name.equals("value") || name.equals("limit");
            Expression filled = compared ? value : shown.get(name);
            QuantityKind kind = filled == null ? null : filled.type().kind();
            if (name.equals("margin") ? value == null : filled == null && !name.equals("at")) {
                wrong.put(m.group(), "one that something fills: " + String.join(", ", known(shown, value)));
            } else if (unit != null && (kind == null || TradeUnits.find(kind, unit) == null)) {
                wrong.put(m.group(), kind == null ? "no unit" : "a unit of " + kind.label());
            } else if (m.group(3) != null && !m.group(3).matches("[1-6]")) {
                wrong.put(m.group(), "1 to 6 digits");
            }
        }
        if (m.replaceAll("").matches("(?s).*[{}].*")) {
            wrong.put("a brace", "a placeholder, as in {at}");
        }
        return wrong;
    }

    private static List<String> known(Map<String, Expression> shown, @Nullable Expression value) {
        List<String> known = new ArrayList<>(List.of("{at}"));
        if (value != null) {
            known.addAll(List.of("{value}", "{limit}", "{margin}"));
        }
        shown.keySet().forEach(name -> known.add("{" + name + "}"));
        return known;
    }
}
