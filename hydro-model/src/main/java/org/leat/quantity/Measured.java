package org.leat.quantity;

import javax.measure.Quantity;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * A value with the tolerance its owner gives it: {@code 16.5 m ± 0.3 m}.
 *
 * @param value what was measured or chosen
 * @param plusMinus how far the true value may lie either way; null where nothing was stated. For a temperature it is a
 *     difference, in kelvins.
 */
@API(status = API.Status.STABLE, since = "0.1")
public record Measured<Q extends Quantity<Q>>(
        Quantity<Q> value, @Nullable Quantity<?> plusMinus) {

    /** {@return a value without a stated tolerance} */
    public static <Q extends Quantity<Q>> Measured<Q> exactly(Quantity<Q> value) {
        return new Measured<>(value, null);
    }

    /** {@return the value in SI} */
    public double si() {
        return Si.of(value);
    }

    /** {@return the tolerance in SI, zero where none was stated} */
    public double plusMinusSi() {
        return plusMinus == null ? 0 : Si.difference(plusMinus);
    }
}
