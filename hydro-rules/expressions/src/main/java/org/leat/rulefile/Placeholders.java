package org.leat.rulefile;

import java.util.ArrayList;
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

    /** {@return what is wrong with a text; nothing if nothing is} */
    static List<String> wrong(String text, Map<String, Expression> shown, @Nullable Expression value) {
        List<String> wrong = new ArrayList<>();
        Matcher m = PLACEHOLDER.matcher(text);
        while (m.find()) {
            String name = m.group(1);
            String unit = m.group(2);
            boolean compared = name.equals("value") || name.equals("limit");
            Expression filled = compared ? value : shown.get(name);
            QuantityKind kind = filled == null ? null : filled.type().kind();
            if (name.equals("margin") ? value == null : filled == null && !name.equals("at")) {
                wrong.add("nothing fills {" + name + "}");
            } else if (unit != null && (kind == null || TradeUnits.find(kind, unit) == null)) {
                wrong.add("\"" + unit + "\" is not a unit of what fills {" + name + "}");
            } else if (m.group(3) != null && !m.group(3).matches("[1-6]")) {
                wrong.add("a placeholder asks for 1 to 6 digits: " + m.group());
            }
        }
        if (m.replaceAll("").matches("(?s).*[{}].*")) {
            wrong.add("a brace that belongs to no placeholder");
        }
        return wrong;
    }
}
