package org.leat.hydraulics;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Dilution of a slug of salt: {@code Q = M / (c ∫ (EC - EC0) dt)}, M mass of salt kg, c its concentration for one unit of
 * conductivity kg/m³ per S/m, EC conductivity S/m, EC0 before the slug. The integral is the trapezium rule on the readings as
 * they came. Table salt near 25 °C: c about 4.9 kg/m³ per S/m (0.49 mg/l for 1 µS/cm); calibrate it with the stream's water.
 * Salt must be mixed across the stream where it is read. ISO 9555-1, integration method.
 *
 * <p>Outside: conductivity that is not back within a twentieth of its peak rise at the last reading (the rest of the salt is
 * still to come), or that never rose.
 */
public final class SaltSlug {

    private static final String LAW = "salt slug, integration method";
    private static final double BACK_WITHIN = 0.05;

    private SaltSlug() {}

    /**
     * {@return flow, m³/s}
     *
     * @param mass of salt, kg
     * @param calibration kg/m³ per S/m
     * @param background conductivity before the slug, S/m
     * @param times s, rising
     * @param conductivities one for each time, S/m
     */
    public static Answer flow(
            double mass, double calibration, double background, double[] times, double[] conductivities) {
        Physical.positive("mass", mass);
        Physical.positive("calibration", calibration);
        Physical.notNegative("background", background);
        if (times.length != conductivities.length || times.length < 2) {
            throw new IllegalArgumentException(
                    times.length + " times for " + conductivities.length + " conductivities");
        }
        double integral = 0;
        double peak = Physical.finite("conductivity", conductivities[0]) - background;
        for (int i = 1; i < times.length; i++) {
            double step = Physical.positive("time step", times[i] - times[i - 1]);
            double rise = Physical.finite("conductivity", conductivities[i]) - background;
            integral += step * (rise + conductivities[i - 1] - background) / 2;
            peak = Math.max(peak, rise);
        }
        if (integral <= 0 || peak <= 0) {
            return Answer.below(LAW, "peak rise of conductivity", peak, 0, "S/m");
        }
        double last = conductivities[times.length - 1] - background;
        if (last > BACK_WITHIN * peak) {
            return Answer.above(LAW, "last rise of conductivity over peak", last / peak, BACK_WITHIN, "1");
        }
        return Answer.of(mass / (calibration * integral));
    }

    /** {@return relative uncertainty of the flow from those of mass, calibration and integral, 1, all at 95 %} */
    public static double relativeUncertainty(double mass, double calibration, double integral) {
        return Uncertainty.rootSumSquare(mass, calibration, integral);
    }
}
