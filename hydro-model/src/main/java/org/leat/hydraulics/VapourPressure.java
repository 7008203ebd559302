package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Saturation pressure of water: {@code ln(p/pc) = (Tc/T) (a1 τ + a2 τ^1.5 + a3 τ^3 + a4 τ^3.5 + a5 τ^4 + a6 τ^7.5)},
 * {@code τ = 1 - T/Tc}; p and pc in Pa, T and Tc in K. From the triple point to the critical point; the law goes on
 * smoothly to 0 °C. Uncertainty 0.025 % near 20 °C.
 *
 * <p>Source: IAPWS SR1-86(1992), equation 1 (Wagner and Pruss, J. Phys. Chem. Ref. Data 22, 1993), coefficients recalled.
 */
public final class VapourPressure {

    private static final double CRITICAL_TEMPERATURE = 647.096;
    private static final double CRITICAL_PRESSURE = 22.064e6;

    private VapourPressure() {}

    /**
     * {@return absolute saturation pressure of pure water, Pa}
     *
     * @param temperatureCelsius °C, 0 to 370
     */
    public static double ofWater(double temperatureCelsius) {
        double t = Physical.within("temperatureCelsius", temperatureCelsius, 0, 370) + 273.15;
        double tau = 1 - t / CRITICAL_TEMPERATURE;
        double root = Math.sqrt(tau);
        double tau3 = tau * tau * tau;
        double sum = -7.85951783 * tau
                + 1.84408259 * tau * root
                - 11.7866497 * tau3
                + 22.6807411 * tau3 * root
                - 15.9618719 * tau3 * tau
                + 1.80122502 * tau3 * tau3 * tau * root;
        return CRITICAL_PRESSURE * Math.exp(CRITICAL_TEMPERATURE / t * sum);
    }
}
