package org.leat.check;

import java.util.Locale;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;

/** The range of a law that was left, in words and kinds that a report can render. */
final class LawRange {

    private LawRange() {}

    /** {@return the message that says which input of which law is too great or too small} */
    static Message message(Amount.OutsideRange o) {
        QuantityKind kind = kind(o.unit());
        boolean above = o.high().isPresent() && o.value() > o.high().getAsDouble();
        return Message.of(
                above ? CommonMessages.ABOVE_RANGE : CommonMessages.BELOW_RANGE,
                Arg.of("law", o.law()),
                Arg.of("input", words(o.input())),
                above
                        ? Arg.of("most", o.high().getAsDouble(), kind)
                        : Arg.of("least", o.low().orElseThrow(), kind),
                Arg.of("found", o.value(), kind),
                Arg.at("field", o.path()));
    }

    /** The first kind that is measured in the unit; a number where no kind is. */
    private static QuantityKind kind(String symbol) {
        for (QuantityKind kind : QuantityKind.values()) {
            if (kind.siSymbol().equals(symbol)) {
                return kind;
            }
        }
        return QuantityKind.RATIO;
    }

    /** {@code wallTemperature} is a wall temperature. */
    private static String words(String input) {
        return input.replaceAll("([a-z])([A-Z])", "$1 $2").toLowerCase(Locale.ROOT);
    }
}
