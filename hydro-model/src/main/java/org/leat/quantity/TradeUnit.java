package org.leat.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import javax.measure.Unit;
import org.apiguardian.api.API;
import org.leat.lazy.Once;

/**
 * One unit of the trade: how it is spelled, what it measures, and its exact relation to the SI unit:
 * {@code si = value · times / by + offset}.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class TradeUnit {

    /** Decimal digits of whole numbers that a double always holds exactly. */
    private static final int EXACT = 15;

    private static final double[] POWERS = {
        1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    private final QuantityKind kind;
    private final List<String> spellings;
    private final Once<Unit<?>> unit;
    private final BigDecimal times;
    private final BigDecimal by;
    private final BigDecimal offset;

    /**
     * @param unit the JSR-385 unit, made when first wanted
     * @param times numerator of the factor to SI
     * @param by denominator of the factor to SI
     */
    TradeUnit(
            QuantityKind kind,
            List<String> spellings,
            Once<Unit<?>> unit,
            BigDecimal times,
            BigDecimal by,
            BigDecimal offset) {
        this.kind = kind;
        this.spellings = List.copyOf(spellings);
        this.unit = unit;
        this.times = times;
        this.by = by;
        this.offset = offset;
    }

    /** {@return what it measures} */
    public QuantityKind kind() {
        return kind;
    }

    /** {@return accepted spellings; the first is the one printed} */
    public List<String> spellings() {
        return spellings;
    }

    /** {@return the JSR-385 unit, always the same} */
    public Unit<?> unit() {
        return unit.get();
    }

    /** {@return whether that very unit is the one that was made for this} */
    boolean hasMade(Unit<?> other) {
        return unit.known() == other;
    }

    /** {@return what is added after the factor; other than zero for temperatures only} */
    public BigDecimal offset() {
        return offset;
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
