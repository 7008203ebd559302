package org.leat.quantity;

import java.math.BigDecimal;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.quantity.Quantities;

/** The border between quantities and the doubles of the solver: every conversion to or from SI passes here, once. */
@API(status = API.Status.STABLE, since = "0.1")
public final class Si {

    private Si() {}

    /**
     * {@return the value in its kind's SI unit}
     *
     * <p>A unit outside {@link TradeUnits} is converted by Indriya.
     */
    public static double of(Quantity<?> quantity) {
        TradeUnit unit = TradeUnits.find(quantity.getUnit());
        return unit == null ? byIndriya(quantity) : unit.toSi(decimal(quantity.getValue()));
    }

    /** {@return the value in SI, or the fallback where there is none} */
    public static double of(@Nullable Quantity<?> quantity, double fallback) {
        return quantity == null ? fallback : of(quantity);
    }

    /** {@return the value in SI; empty where there is none} */
    public static OptionalDouble optional(@Nullable Quantity<?> quantity) {
        return quantity == null ? OptionalDouble.empty() : OptionalDouble.of(of(quantity));
    }

    /** {@return a difference in SI; of a temperature in °C the zero point does not enter} */
    public static double difference(Quantity<?> quantity) {
        TradeUnit unit = TradeUnits.find(quantity.getUnit());
        return unit == null ? byIndriya(quantity) : unit.differenceToSi(decimal(quantity.getValue()));
    }

    /**
     * {@return a quantity of a trade unit}
     *
     * @param spelling as {@link TradeUnits} knows it, of the kind that {@code type} names
     * @throws IllegalArgumentException for an unknown spelling or a value that is not finite
     */
    public static <Q extends Quantity<Q>> Quantity<Q> quantity(double value, String spelling, Class<Q> type) {
        TradeUnit unit = TradeUnits.find(QuantityKind.of(type), spelling);
        if (unit == null) {
            throw new IllegalArgumentException(
                    "not a unit of " + QuantityKind.of(type).label() + ": " + spelling);
        }
        return quantity(BigDecimal.valueOf(value), unit);
    }

    /** {@return a quantity of a trade unit} The caller's type must be the unit's kind. */
    @SuppressWarnings("unchecked") // the register pairs every unit with its kind's type
    static <Q extends Quantity<Q>> Quantity<Q> quantity(BigDecimal value, TradeUnit unit) {
        BigDecimal plain = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        return Quantities.getQuantity(plain, (Unit<Q>) unit.unit());
    }

    static BigDecimal decimal(Number value) {
        return value instanceof BigDecimal b ? b : BigDecimal.valueOf(value.doubleValue());
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // a unit and its system unit measure the same
    private static double byIndriya(Quantity quantity) {
        Unit unit = quantity.getUnit();
        return unit.getConverterTo(unit.getSystemUnit())
                .convert(quantity.getValue())
                .doubleValue();
    }
}
