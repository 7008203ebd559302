package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Pure, air-free water at one atmosphere (101 325 Pa) from 0 to 95 °C, against temperature.
 *
 * <ul>
 *   <li>Density and isothermal compressibility: Kell, J. Chem. Eng. Data 20 (1975) 97, equations 16 and 20, turned from
 *       the 1968 to the 1990 temperature scale by t68 = 1.00024 t90 (Saunders 1990).
 *   <li>Speed of sound: Marczak, J. Acoust. Soc. Am. 102 (1997) 2776.
 *   <li>Viscosity: {@link IapwsViscosity}; vapour pressure: {@link VapourPressure}.
 * </ul>
 *
 * The coefficients are recalled from these papers and held in tests against IAPWS-95 values and an IAPWS-IF97 library:
 * density to 1e-5 (Kell's greatest density, 999.972, is 3e-6 below today's), compressibility
 * 0.2 %, speed of sound 1e-4. Stream water holds salts and air: a tenth of a per cent
 * by volume of free bubbles cuts the speed of sound to a quarter.
 *
 * <p>Every method takes {@code temperatureCelsius}, °C, and throws {@link IllegalArgumentException} outside 0 to 95.
 */
public final class WaterProperties {

    /** Pressure for which the properties hold, Pa: one standard atmosphere. */
    public static final double PRESSURE = 101_325;

    /** Coldest temperature of these laws, °C. */
    public static final double COLDEST = 0;

    /** Hottest temperature of these laws, °C. */
    public static final double HOTTEST = 95;

    private static final double[] DENSITY = {
        999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12
    };
    private static final double[] COMPRESSIBILITY = {
        50.88496, 0.6163813, 1.459187e-3, 20.08438e-6, -58.47727e-9, 410.4110e-12
    };
    private static final double[] SOUND_SPEED = {
        1402.385, 5.038813, -5.799136e-2, 3.287156e-4, -1.398845e-6, 2.787860e-9
    };

    private WaterProperties() {}

    /** {@return density, kg/m³} */
    public static double density(double temperatureCelsius) {
        double t = onScaleOf1968(temperatureCelsius);
        return polynomial(DENSITY, t) / (1 + 16.879850e-3 * t);
    }

    /**
     * {@return density under pressure, kg/m³} The isothermal modulus is taken as constant: good to 5e-6 up to 2 MPa.
     *
     * @param pressure absolute, Pa; above zero
     */
    public static double density(double temperatureCelsius, double pressure) {
        double over = Physical.positive("pressure", pressure) - PRESSURE;
        return density(temperatureCelsius) * (1 + over / isothermalBulkModulus(temperatureCelsius));
    }

    /** {@return dynamic viscosity, Pa·s} */
    public static double dynamicViscosity(double temperatureCelsius) {
        return IapwsViscosity.dynamicViscosity(temperatureCelsius, density(temperatureCelsius));
    }

    /** {@return kinematic viscosity, m²/s} */
    public static double kinematicViscosity(double temperatureCelsius) {
        return dynamicViscosity(temperatureCelsius) / density(temperatureCelsius);
    }

    /** {@return absolute vapour pressure, Pa} */
    public static double vapourPressure(double temperatureCelsius) {
        return VapourPressure.ofWater(checked(temperatureCelsius));
    }

    /** {@return speed of sound in water free of bubbles, m/s} */
    public static double soundSpeed(double temperatureCelsius) {
        return polynomial(SOUND_SPEED, checked(temperatureCelsius));
    }

    /** {@return isentropic bulk modulus, Pa: density times speed of sound squared, the one for pressure waves} */
    public static double isentropicBulkModulus(double temperatureCelsius) {
        double c = soundSpeed(temperatureCelsius);
        return density(temperatureCelsius) * c * c;
    }

    /** {@return isothermal bulk modulus, Pa: for slow compression} */
    public static double isothermalBulkModulus(double temperatureCelsius) {
        double t = onScaleOf1968(temperatureCelsius);
        return 1e11 * (1 + 19.67348e-3 * t) / polynomial(COMPRESSIBILITY, t);
    }

    private static double polynomial(double[] coefficients, double t) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * t + coefficients[i];
        }
        return sum;
    }

    private static double onScaleOf1968(double temperatureCelsius) {
        return 1.00024 * checked(temperatureCelsius);
    }

    private static double checked(double temperatureCelsius) {
        return Physical.within("temperatureCelsius", temperatureCelsius, COLDEST, HOTTEST);
    }
}
