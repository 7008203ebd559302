package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Dynamic viscosity of water: {@code µ = µ0(T) µ1(T, ρ)}, with {@code µ0 = 100 √T' / Σ Hi / T'^i} and {@code µ1 =
 * exp(ρ' Σ (1/T' - 1)^i Σ Hij (ρ' - 1)^j)} in µPa·s, {@code T' = T / 647.096 K}, {@code ρ' = ρ / 322 kg/m³}. The critical
 * enhancement is left out: it is nil away from the critical point. Uncertainty 1 % for liquid water.
 *
 * <p>Source: IAPWS R12-08(2008), equations 10 to 12, tables 1 and 2; coefficients recalled and held against the
 * release's check values.
 */
public final class IapwsViscosity {

    private static final double[] H0 = {1.67752, 2.20462, 0.6366564, -0.241605};

    /** Hij, one row for each power i of 1/T' - 1. */
    private static final double[][] H1 = {
        {5.20094e-1, 2.22531e-1, -2.81378e-1, 1.61913e-1, -3.25372e-2, 0, 0},
        {8.50895e-2, 9.99115e-1, -9.06851e-1, 2.57399e-1, 0, 0, 0},
        {-1.08374, 1.88797, -7.72479e-1, 0, 0, 0, 0},
        {-2.89555e-1, 1.26613, -4.89837e-1, 0, 6.98452e-2, 0, -4.35673e-3},
        {0, 0, -2.57040e-1, 0, 0, 8.72102e-3, 0},
        {0, 1.20573e-1, 0, 0, 0, 0, -5.93264e-4},
    };

    private IapwsViscosity() {}

    /**
     * {@return dynamic viscosity, Pa·s}
     *
     * @param temperatureCelsius °C, 0 to 370 of the release's wider range
     * @param density kg/m³, above zero
     */
    public static double dynamicViscosity(double temperatureCelsius, double density) {
        double t = (Physical.within("temperatureCelsius", temperatureCelsius, 0, 370) + 273.15) / 647.096;
        double rho = Physical.positive("density", density) / 322;
        double dilute = 100 * Math.sqrt(t) / (H0[0] + (H0[1] + (H0[2] + H0[3] / t) / t) / t);
        double x = 1 / t - 1;
        double sum = 0;
        for (int i = H1.length - 1; i >= 0; i--) {
            double row = 0;
            for (int j = H1[i].length - 1; j >= 0; j--) {
                row = row * (rho - 1) + H1[i][j];
            }
            sum = sum * x + row;
        }
        return dilute * Math.exp(rho * sum) * 1e-6;
    }
}
