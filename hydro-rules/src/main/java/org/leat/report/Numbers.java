package org.leat.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.leat.plant.numbers.Amount;

/** Numbers for machines: nine significant digits, so that the last bit of a sine never reaches a file. */
final class Numbers {

    private static final MathContext NINE = new MathContext(9);

    private Numbers() {}

    /** {@return the number rounded; null for one that is not finite} */
    static @Nullable BigDecimal of(double value) {
        if (!Double.isFinite(value)) {
            return null;
        }
        BigDecimal rounded = new BigDecimal(value).round(NINE).stripTrailingZeros();
        return rounded.signum() == 0
                ? BigDecimal.ZERO
                : rounded.scale() < 0 && rounded.precision() - rounded.scale() < 16 ? rounded.setScale(0) : rounded;
    }

    /** {@return the number rounded; null where the plant has none} */
    static @Nullable BigDecimal of(Amount amount) {
        return amount instanceof Amount.Known known ? of(known.value()) : null;
    }

    /** {@return the number rounded; null for none or one that is not finite} */
    static @Nullable BigDecimal of(OptionalDouble value) {
        return value.isPresent() ? of(value.getAsDouble()) : null;
    }
}
