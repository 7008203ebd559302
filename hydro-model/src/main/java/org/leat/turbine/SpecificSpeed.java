package org.leat.turbine;

import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * Specific speed in the trade's units: {@code nq = n sqrt(Q)/H^0.75} and {@code ns = n sqrt(P)/H^1.25}.
 *
 * <p>Symbols: {@code n} rpm, from the angular speed [rad/s] passed in; {@code Q} flow of one jet [m3/s]; {@code H} net
 * head [m]; {@code P} power of one jet [kW], from [W] passed in. With metric horsepower in place of kW {@code ns} is
 * 1.166 times larger. Power and flow are those of one jet or of the whole wheel, as passed in: never mix the two, a wheel of several
 * jets has √jets times the number of one. Valid for all physical inputs. Source: definitions, any text; by proportions: a
 * power plant textbook (read).
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

    /** Metric horsepower, in which ns is this much larger than in kW: √(1 kW/0.7355 kW). */
    public static final double METRIC_HORSEPOWER = Math.sqrt(1 / 0.73549875);

    /** ns in rpm, kW and m over ns in rpm, horsepower and feet. */
    public static final double UNITED_STATES = Math.sqrt(0.745699872) * Math.pow(1 / 0.3048, 1.25);

    private static final double SINGLE_JET = 244.75;

    /** {@return nQE: {@code n √Q/(g H)^0.75}, n in 1/s; nq is 332.5 times it} Flow of the jets that are meant, m³/s. */
    public static double dimensionless(double angularSpeed, double flow, double netHead) {
        return ofFlow(angularSpeed, flow, netHead) / 60 / Math.pow(Gravity.STANDARD, 0.75);
    }

    /**
     * {@return ns, rpm, kW, m, of a wheel with split buckets by its proportions: {@code 244.75 √jets/(D/d)} in metric horsepower}
     *
     * @param pitchToJet pitch diameter over jet diameter
     * @param jets how many
     */
    public static double ofProportions(double pitchToJet, int jets) {
        Physical.positive("pitchToJet", pitchToJet);
        Physical.positive("jets", jets);
        return SINGLE_JET * Math.sqrt(jets) / pitchToJet / METRIC_HORSEPOWER;
    }
}
