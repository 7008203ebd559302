package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Share of what a plant makes day and night that its inverter's own consumption eats: P_idle/P_gen. Fifteen watts of a plant of
 * fifty are thirty per cent of everything. Source: energy balance.
 */
public final class InverterIdleShare {

    /** Seconds of a day. */
    private static final double DAY = 86_400;

    private InverterIdleShare() {}

    /** {@return share of the generation} Above one the inverter alone empties the battery. */
    public static double share(double idlePower, double generatedPower) {
        Physical.notNegative("idle power", idlePower);
        return idlePower / Physical.positive("generated power", generatedPower);
    }

    /** {@return energy of a day, J, of a power that never stops, W} */
    public static double daily(double power) {
        return Physical.notNegative("power", power) * DAY;
    }
}
