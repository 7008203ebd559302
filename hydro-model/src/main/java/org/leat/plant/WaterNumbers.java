package org.leat.plant;

/**
 * Water in the pipe while running.
 *
 * @param temperature K
 * @param density kg/m³
 * @param dynamicViscosity Pa·s
 * @param vapourPressure absolute, Pa
 * @param bulkModulus isentropic, Pa
 */
public record WaterNumbers(
        double temperature, double density, double dynamicViscosity, double vapourPressure, double bulkModulus) {

    /** {@return kinematic viscosity, m²/s} */
    public double kinematicViscosity() {
        return dynamicViscosity / density;
    }
}
