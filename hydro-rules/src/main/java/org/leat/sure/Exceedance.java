package org.leat.sure;

import org.jspecify.annotations.Nullable;
import org.leat.check.Comparison;
import org.leat.check.Outcome;

/** How far a value is beyond its limit, one number for each limit, SI; below zero where it holds. */
final class Exceedance {

    private Exceedance() {}

    static double[] of(Comparison compared) {
        return switch (compared.sense()) {
            case AT_MOST -> new double[] {compared.value() - compared.high()};
            case AT_LEAST -> new double[] {compared.low() - compared.value()};
            case WITHIN -> new double[] {compared.value() - compared.high(), compared.low() - compared.value()};
        };
    }

    /** {@return the same of another answer to the same question; null where that compares nothing, or something else} */
    static double @Nullable [] alike(Comparison compared, @Nullable Outcome other) {
        Comparison then = other == null ? null : other.comparison();
        return then == null || then.sense() != compared.sense() || then.kind() != compared.kind() ? null : of(then);
    }
}
