package org.leat.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import javax.measure.Unit;
import org.apiguardian.api.API;

/**
 * One unit of the trade: how it is spelled, what it measures, and its exact relation to the SI unit:
 * {@code si = value · times / by + offset}.
 *
 * @param kind what it measures
 * @param spellings accepted spellings; the first is the one printed
 * @param unit the JSR-385 unit
 * @param times numerator of the factor to SI
 * @param by denominator of the factor to SI
 * @param offset added after the factor; only for temperatures
 */
@API(status = API.Status.INTERNAL, since = "0.1")
public record TradeUnit(
        QuantityKind kind, List<String> spellings, Unit<?> unit, BigDecimal times, BigDecimal by, BigDecimal offset) {

    /** Decimal digits of whole numbers that a double always holds exactly. */
    private static final int EXACT = 15;

    private static final double[] POWERS = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    public TradeUnit {
        spellings = List.copyOf(spellings);
    }

    /** {@return the spelling used when printing} */
    public String symbol() {
        return spellings.get(0);
    }

    /** {@return a value of this unit in the kind's SI unit, rounded once} */
    public double toSi(BigDecimal value) {
        if (offset.signum() == 0) {
            return differenceToSi(value);
        }
        boolean degrees = times.compareTo(BigDecimal.ONE) == 0 && by.compareTo(BigDecimal.ONE) == 0;
        BigDecimal scaled = degrees ? value : value.multiply(times).divide(by, MathContext.DECIMAL128);
        return scaled.add(offset).doubleValue();
    }

    /** {@return a difference of two values of this unit in SI: the offset of a temperature does not enter} */
    public double differenceToSi(BigDecimal value) {
        if (times.precision() > EXACT) {
            // a factor with π in it is rounded as it is
            return value.doubleValue() * (times.doubleValue() / by.doubleValue());
        }
        BigDecimal product = value.multiply(times);
        int shift = product.scale() - by.scale();
        if (product.precision() + Math.max(0, -shift) <= EXACT && by.precision() + Math.max(0, shift) <= EXACT) {
            // both are whole numbers that a double holds exactly, so that their quotient is rounded once
            double numerator = product.unscaledValue().longValue() * POWERS[Math.max(0, -shift)];
            return numerator / (by.unscaledValue().longValue() * POWERS[Math.max(0, shift)]);
        }
        return product.divide(by, MathContext.DECIMAL128).doubleValue();
    }

    /** {@return an SI value in this unit} */
    public double fromSi(double si) {
        return new BigDecimal(si)
                .subtract(offset)
                .multiply(by)
                .divide(times, MathContext.DECIMAL128)
                .doubleValue();
    }
}
