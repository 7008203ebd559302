package org.leat.plant.numbers;

import org.apiguardian.api.API;
import org.leat.hydraulics.WaterProperties;
import org.leat.law.Gravity;
import org.leat.quantity.Celsius;

/**
 * Water at a temperature.
 *
 * @param temperature K
 * @param density kg/m³
 * @param dynamicViscosity Pa·s
 * @param vapourPressure absolute, Pa
 * @param bulkModulus isentropic, Pa
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record WaterNumbers(
        double temperature, double density, double dynamicViscosity, double vapourPressure, double bulkModulus) {

    /** {@return water at a temperature, K; beyond what is liquid the nearest the laws know} */
    public static WaterNumbers at(double kelvin) {
        double celsius = Math.min(Math.max(Celsius.of(kelvin), WaterProperties.COLDEST), WaterProperties.HOTTEST);
        return new WaterNumbers(
                Celsius.toKelvin(celsius),
                WaterProperties.density(celsius),
                WaterProperties.dynamicViscosity(celsius),
                WaterProperties.vapourPressure(celsius),
                WaterProperties.isentropicBulkModulus(celsius));
    }

    /** {@return weight of a volume, N/m³} */
    public double specificWeight() {
        return density * Gravity.STANDARD;
    }

    /** {@return kinematic viscosity, m²/s} */
    public double kinematicViscosity() {
        return dynamicViscosity / density;
    }
}
