package org.leat.expression;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.TradeUnit;
import org.leat.quantity.TradeUnits;

/**
 * Units as functions, {@code bar(4)} or {@code 4.bar()}: each unit of the register by its first spelling in plain letters,
 * a slash as {@code _per_}. {@code K} is a difference, {@code degC} a temperature, {@code percent} a number.
 */
final class UnitWords {

    static final Map<String, TradeUnit> ALL = all();

    private UnitWords() {}

    private static Map<String, TradeUnit> all() {
        Map<String, TradeUnit> words = new LinkedHashMap<>();
        for (QuantityKind kind : QuantityKind.values()) {
            for (TradeUnit unit : TradeUnits.of(kind)) {
                boolean kelvin =
                        kind == QuantityKind.TEMPERATURE && unit.spellings().contains("K");
                if (unit.spellings().contains("%")) {
                    words.put("percent", unit);
                } else if (!kelvin && !unit.spellings().contains("")) {
                    unit.spellings().stream()
                            .map(s -> s.replace("/", "_per_").replace("\u00B7", ""))
                            .filter(s -> s.matches("[A-Za-z][A-Za-z0-9_]*"))
                            .findFirst()
                            .ifPresent(word -> words.put(word, unit));
                }
            }
        }
        return Collections.unmodifiableMap(words);
    }
}
