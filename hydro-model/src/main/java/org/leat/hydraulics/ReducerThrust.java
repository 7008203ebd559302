package org.leat.hydraulics;

/**
 * Force of the water on a reducer, downstream: {@code F = p1 A1 + ρ Q V1 − p2 A2 − ρ Q V2}, N, with the pressure behind it from
 * Bernoulli, {@code p2 = p1 + ρ (V1² − V2²)/2}. Source: momentum theorem; loss in the reducer left out, which is on the low
 * side by less than one per cent in penstocks of this size.
 */
public final class ReducerThrust {

    private ReducerThrust() {}

    /**
     * {@return force, N}
     *
     * @param pressure before the reducer, gauge, Pa
     * @param density kg/m³
     * @param flow m³/s
     * @param upstreamBore m
     * @param downstreamBore m
     */
    public static double force(
            double pressure, double density, double flow, double upstreamBore, double downstreamBore) {
        double before = flow / Momentum.area(upstreamBore);
        double behind = flow / Momentum.area(downstreamBore);
        double pressureBehind = pressure + density * (before * before - behind * behind) / 2;
        return Momentum.along(pressure, density, flow, upstreamBore)
                - Momentum.along(pressureBehind, density, flow, downstreamBore);
    }
}
