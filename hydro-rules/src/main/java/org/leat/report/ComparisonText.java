package org.leat.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leat.check.Comparison;
import org.leat.check.NamedLimit;
import org.leat.check.RuleInForce;
import org.leat.quantity.QuantityKind;

/** Value, limit and margin of a comparison in words. */
final class ComparisonText {

    private static final double BEYOND_ALL = 1e12;
    private static final double MOST_SHARE = 10;
    private static final int MOST_DIGITS = 4;

    private final Comparison comparison;
    private final @Nullable String unit;
    private final int digits;

    private ComparisonText(Comparison comparison, @Nullable String unit, int digits) {
        this.comparison = comparison;
        this.unit = unit;
        this.digits = digits;
    }

    /** {@return the texts of a rule's comparison} The unit is the one in which the rule states its limit. */
    static ComparisonText of(Comparison comparison, RuleInForce rule) {
        String unit = null;
        for (NamedLimit limit : rule.card().limits().values()) {
            if (comparison.isSetBy(limit.name()) && limit.kind() == comparison.kind()) {
                unit = limit.unit();
            }
        }
        return new ComparisonText(comparison, unit, enough(comparison, unit));
    }

    /** As many digits as tell the value from the limit. */
    private static int enough(Comparison c, @Nullable String unit) {
        double limit = switch (c.sense()) {
            case AT_MOST -> c.high();
            case AT_LEAST -> c.low();
            case WITHIN -> c.value() > c.high() ? c.high() : c.low();
        };
        for (int digits = 3; digits < MOST_DIGITS; digits++) {
            if (c.value() == limit
                    || !show(c.value(), c.kind(), unit, digits).equals(show(limit, c.kind(), unit, digits))) {
                return digits;
            }
        }
        return MOST_DIGITS;
    }

    String value() {
        return show(comparison.value(), comparison.kind(), unit, digits);
    }

    String value(String otherUnit, int otherDigits) {
        return show(comparison.value(), comparison.kind(), otherUnit, Math.max(digits, otherDigits));
    }

    String limit() {
        return limit(unit, digits);
    }

    String limit(@Nullable String otherUnit, int otherDigits) {
        int d = Math.max(digits, otherDigits);
        return switch (comparison.sense()) {
            case AT_MOST -> "at most " + show(comparison.high(), comparison.kind(), otherUnit, d);
            case AT_LEAST -> "at least " + show(comparison.low(), comparison.kind(), otherUnit, d);
            case WITHIN ->
                show(comparison.low(), comparison.kind(), otherUnit, d)
                        + " to "
                        + show(comparison.high(), comparison.kind(), otherUnit, d);
        };
    }

    /** {@return a standard uncertainty of the value, in the unit of the limit} */
    String uncertainty(double si) {
        return unit == null || comparison.kind() == QuantityKind.TEMPERATURE
                ? UsualUnits.show(si, difference(), 2)
                : UsualUnits.show(si, comparison.kind(), unit, 2);
    }

    String margin() {
        double margin = comparison.margin();
        String side = comparison.holds() ? " to spare" : " beyond";
        if (!Double.isFinite(margin) || Math.abs(margin) > BEYOND_ALL) {
            return margin > 0 ? "without limit" : "without bounds beyond it";
        }
        double limit = comparison.nearestLimit();
        double distance = Math.abs(comparison.value() - limit);
        if (isNil(limit)) {
            // no share of nothing: how far it is
            String apart = UsualUnits.show(distance, difference(), 2);
            return isNil(comparison.value()) ? "nothing" + side : apart + side;
        }
        double share = Math.abs(margin);
        if (share > MOST_SHARE) {
            double times = comparison.value() / limit;
            return times > 1 ? whole(times) + " times the limit" : whole(share) + " times the limit" + side;
        }
        if (share < 0.0005) {
            return comparison.value() == limit ? "nothing" + side : "less than 0.1 %" + side;
        }
        return String.format(Locale.ROOT, share < 0.1 ? "%.1f %%%s" : "%.0f %%%s", share * 100, side);
    }

    private static String whole(double times) {
        return new BigDecimal(times).round(new MathContext(3)).toBigInteger().toString();
    }

    private boolean isNil(double si) {
        double zero = comparison.kind() == QuantityKind.TEMPERATURE ? 273.15 : 0;
        return Math.abs(si - zero) < 1e-12;
    }

    private QuantityKind difference() {
        return comparison.kind() == QuantityKind.TEMPERATURE ? QuantityKind.TEMPERATURE_DIFFERENCE : comparison.kind();
    }

    private static String show(double si, QuantityKind kind, @Nullable String unit, int digits) {
        return unit == null ? UsualUnits.show(si, kind, digits) : UsualUnits.show(si, kind, unit, digits);
    }
}
