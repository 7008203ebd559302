package org.leat.hydraulics;

import org.leat.law.Answer;

/**
 * Explicit friction factor (Darcy), for cross-checks: {@code f = 0.25 / log10(k/(3.7 D) + 5.74/Re^0.9)²}. Within 1 % of
 * Colebrook-White for Re from 5000 to 1e8 and k/D from 1e-6 to 1e-2; outside otherwise. The plant uses {@link
 * DarcyFriction}. Source: Swamee and Jain, J. Hydraul. Div. ASCE 102 (1976) 657.
 */
public final class SwameeJain {

    private SwameeJain() {}

    /** {@return the friction factor, 1} */
    public static Answer frictionFactor(double reynolds, double relativeRoughness) {
        if (!(reynolds >= 5e3 && reynolds <= 1e8)) {
            return Answer.outside("Swamee-Jain", "reynolds", reynolds, 5e3, 1e8, "1");
        }
        if (!(relativeRoughness >= 1e-6 && relativeRoughness <= 1e-2)) {
            return Answer.outside("Swamee-Jain", "relativeRoughness", relativeRoughness, 1e-6, 1e-2, "1");
        }
        double log = Math.log10(relativeRoughness / 3.7 + 5.74 / Math.pow(reynolds, 0.9));
        return Answer.of(0.25 / (log * log));
    }
}
