package org.leat.hydraulics;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Air that the outside pressure drives through a vent into a pipe, isentropic nozzle flow counted at outside density:
 *
 * <pre>
 * Q/A = C r^(1/κ) √(2 κ/(κ − 1) · p/ρ · (1 − r^((κ−1)/κ)))    r = (p − Δp)/p
 * </pre>
 *
 * with outside pressure p [Pa] and density ρ [kg/m³], pressure drop Δp [Pa], κ = 1.4, and a coefficient C of 0.6 for a sharp
 * opening (0.7 in one American manual). The incompressible {@code C √(2 Δp/ρ)} is 1 % too kind at 2 kPa, 25 % at 34 kPa.
 *
 * <p>Range: drops from nil to the critical one (r = 0.528, 47.8 kPa at sea level), above which the flow is choked: {@link
 * Answer.Outside}. Left out, and to be added: friction of the vent's own pipe and its screen. Counting the air at outside pressure
 * is on the safe side. Source: any text on gas flow; AWWA M51. Practice of an air valve maker (read): a drop of at most 2 psi
 * while filling, 5 psi while draining, less where the wall is weaker.
 */
public final class AirInflow {

    /** Coefficient of a sharp opening. */
    public static final double SHARP = 0.6;

    /** Greatest drop at an air valve while the line fills, Pa: 2 psi. */
    public static final double FILLING_DROP = 2 * 6894.757293168;

    /** Greatest drop at an air valve while the line drains, Pa: 5 psi; less where the wall is weaker. */
    public static final double DRAINING_DROP = 5 * 6894.757293168;

    private static final double KAPPA = 1.4;
    private static final double CRITICAL = 1 - Math.pow(2 / (KAPPA + 1), KAPPA / (KAPPA - 1));
    private static final String LAW = "air through a vent, not choked";

    private AirInflow() {}

    /**
     * {@return flow of outside air over the area of the opening, m/s}
     *
     * @param drop Δp, Pa
     * @param coefficient C
     * @param pressure outside, Pa
     * @param density outside, kg/m³
     */
    public static Answer perArea(double drop, double coefficient, double pressure, double density) {
        Physical.notNegative("drop", drop);
        Physical.within("coefficient", coefficient, Double.MIN_NORMAL, 1);
        Physical.positive("pressure", pressure);
        Physical.positive("density", density);
        if (drop > CRITICAL * pressure) {
            return Answer.outside(LAW, "drop", drop, 0, CRITICAL * pressure, "Pa");
        }
        double ratio = 1 - drop / pressure;
        double energy = 2 * KAPPA / (KAPPA - 1) * pressure / density * (1 - Math.pow(ratio, (KAPPA - 1) / KAPPA));
        return Answer.of(coefficient * Math.pow(ratio, 1 / KAPPA) * Math.sqrt(energy));
    }

    /**
     * {@return bore, m, of a round opening that lets in a flow of air, m³/s, at a drop} Outside where the drop is, or nil.
     *
     * @param flow that must enter: the water that leaves
     */
    public static Answer leastBore(double flow, double drop, double coefficient, double pressure, double density) {
        Physical.notNegative("flow", flow);
        Answer speed = perArea(drop, coefficient, pressure, density);
        if (drop == 0) {
            return Answer.outside(LAW, "drop", drop, Double.MIN_NORMAL, CRITICAL * pressure, "Pa");
        }
        return speed instanceof Answer.Value v ? Answer.of(Math.sqrt(flow / v.value() * 4 / Math.PI)) : speed;
    }

    /**
     * {@return drop of pressure, Pa, at which a round opening lets in a flow of air, m³/s} Outside where it would be choked.
     *
     * @param bore of the opening, m
     */
    public static Answer drop(double flow, double bore, double coefficient, double pressure, double density) {
        double wanted = Physical.notNegative("flow", flow) / (Math.PI / 4 * Physical.positive("bore", bore) * bore);
        double low = 0;
        double high = CRITICAL * Physical.positive("pressure", pressure);
        double most = perArea(high, coefficient, pressure, density).orThrow();
        if (wanted > most) {
            return Answer.outside(LAW, "flow over area", wanted, 0, most, "m/s");
        }
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (perArea(middle, coefficient, pressure, density).orThrow() < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Answer.of(high);
    }
}
