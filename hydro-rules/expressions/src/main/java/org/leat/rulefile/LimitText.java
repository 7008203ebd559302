package org.leat.rulefile;

import org.jspecify.annotations.Nullable;
import org.leat.check.NamedLimit;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.QuantityText;
import org.leat.quantity.TradeUnit;
import org.leat.quantity.TradeUnits;

/** A limit as a rule file writes it: {@code 4 bar}, {@code 30 %}, {@code 0.8}. */
final class LimitText {

    private LimitText() {}

    /** {@return the limit; null if the text is no value with a unit} A unit K means a difference. */
    static @Nullable NamedLimit read(String name, String text, String source) {
        for (QuantityKind kind : QuantityKind.values()) {
            boolean kelvin = kind == QuantityKind.TEMPERATURE && text.endsWith("K");
            if (!kelvin
                    && !TradeUnits.of(kind).isEmpty()
                    && QuantityText.read(text, kind) instanceof QuantityText.Understood understood
                    && understood.measured().plusMinus() == null) {
                TradeUnit unit = TradeUnits.find(understood.measured().value().getUnit());
                String symbol = unit == null ? "" : unit.symbol();
                return new NamedLimit(name, kind, understood.measured().si(), symbol, source);
            }
        }
        return null;
    }
}
