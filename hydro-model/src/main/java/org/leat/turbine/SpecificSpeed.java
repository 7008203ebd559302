package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Specific speed in the trade's units: {@code nq = n sqrt(Q)/H^0.75} and {@code ns = n sqrt(P)/H^1.25}.
 *
 * <p>Symbols: {@code n} rpm, from the angular speed [rad/s] passed in; {@code Q} flow of one jet [m3/s]; {@code H} net
 * head [m]; {@code P} power of one jet [kW], from [W] passed in. With metric horsepower in place of kW {@code ns} is
 * 1.166 times larger. Valid for all physical inputs. Source: definitions, any text.
 */
public final class SpecificSpeed {

    private SpecificSpeed() {}

    private static final double RPM = 30 / Math.PI;

    /** {@return nq per jet: rpm, m3/s, m} */
    public static double ofFlow(double angularSpeed, double flowOfOneJet, double netHead) {
        Physical.notNegative("angularSpeed", angularSpeed);
        Physical.notNegative("flowOfOneJet", flowOfOneJet);
        Physical.positive("netHead", netHead);
        return angularSpeed * RPM * Math.sqrt(flowOfOneJet) / Math.pow(netHead, 0.75);
    }

    /** {@return ns per jet: rpm, kW, m} */
    public static double ofPower(double angularSpeed, double powerOfOneJet, double netHead) {
        Physical.notNegative("angularSpeed", angularSpeed);
        Physical.notNegative("powerOfOneJet", powerOfOneJet);
        Physical.positive("netHead", netHead);
        return angularSpeed * RPM * Math.sqrt(powerOfOneJet / 1000) / Math.pow(netHead, 1.25);
    }
}
