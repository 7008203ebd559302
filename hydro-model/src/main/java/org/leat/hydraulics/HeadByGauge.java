package org.leat.hydraulics;

import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Head from a pressure gauge on a filled, standing pipe: {@code H = p/(ρ g) + z}, p Pa above atmosphere, ρ kg/m³ of the water in
 * the pipe, z height of the gauge above the nozzle axis m (negative below). Hydrostatics; exact. Air in the pipe makes it read
 * wrong, either way.
 */
public final class HeadByGauge {

    private HeadByGauge() {}

    /**
     * {@return gross head, m}
     *
     * @param pressure Pa above atmosphere
     * @param pressurePlusMinus its uncertainty at 95 %, Pa
     * @param gaugeAboveNozzle m
     * @param temperatureCelsius of the water, °C, 0 to 95
     */
    public static Estimate head(
            double pressure, double pressurePlusMinus, double gaugeAboveNozzle, double temperatureCelsius) {
        double weight = WaterProperties.density(temperatureCelsius) * Gravity.STANDARD;
        return Estimate.of(
                Physical.notNegative("pressure", pressure) / weight
                        + Physical.finite("gaugeAboveNozzle", gaugeAboveNozzle),
                Physical.notNegative("pressurePlusMinus", pressurePlusMinus) / weight);
    }
}
