package org.leat.report;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leat.check.Comparison;
import org.leat.check.NamedLimit;
import org.leat.check.RuleInForce;
import org.leat.quantity.QuantityKind;

/** Value, limit and margin of a comparison in words. */
final class ComparisonText {

    private static final int MOST_DIGITS = 6;

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

    String margin() {
        double margin = comparison.margin();
        if (!Double.isFinite(margin)) {
            return margin > 0 ? "without limit" : "without bounds beyond it";
        }
        String share = String.format(Locale.ROOT, "%.0f %%", Math.abs(margin) * 100);
        if (Math.abs(margin) < 0.1) {
            share = String.format(Locale.ROOT, "%.1f %%", Math.abs(margin) * 100);
        }
        return comparison.holds() ? share + " to spare" : share + " beyond";
    }

    private static String show(double si, QuantityKind kind, @Nullable String unit, int digits) {
        return unit == null ? UsualUnits.show(si, kind, digits) : UsualUnits.show(si, kind, unit, digits);
    }
}
