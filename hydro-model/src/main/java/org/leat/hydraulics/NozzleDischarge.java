package org.leat.hydraulics;

import org.leat.law.Gravity;
import org.leat.law.Physical;

/**
 * A free jet from total head: {@code Vj = Cv √(2 g H)} (Torricelli), jet area {@code Aj = Cc A}, flow {@code Q = Cv Cc A √(2 g
 * H)}, power {@code P = ½ ρ Q Vj²}. H is the total head just upstream of the nozzle, pressure head plus velocity head, m; A
 * the area of the bore, m². Holds for Reynolds numbers of the bore above about 1e4; below, the coefficients fall.
 *
 * <p>Source: any text (White, Fluid Mechanics, 6.12). {@link NozzleKind} holds coefficients.
 */
public final class NozzleDischarge {

    private NozzleDischarge() {}

    /** {@return jet velocity, m/s} */
    public static double jetVelocity(double velocityCoefficient, double totalHead) {
        Physical.within("velocityCoefficient", velocityCoefficient, Double.MIN_NORMAL, 1);
        return velocityCoefficient * Math.sqrt(2 * Gravity.STANDARD * Physical.notNegative("totalHead", totalHead));
    }

    /** {@return area of the jet where it is narrowest, m²} */
    public static double jetArea(double contractionCoefficient, double bore) {
        Physical.within("contractionCoefficient", contractionCoefficient, Double.MIN_NORMAL, 1);
        return contractionCoefficient * Math.PI / 4 * Physical.positive("bore", bore) * bore;
    }

    /** {@return diameter of the jet where it is narrowest, m} */
    public static double jetDiameter(double contractionCoefficient, double bore) {
        return Math.sqrt(4 / Math.PI * jetArea(contractionCoefficient, bore));
    }

    /** {@return flow through one nozzle, m³/s} */
    public static double flow(
            double velocityCoefficient, double contractionCoefficient, double bore, double totalHead) {
        return jetVelocity(velocityCoefficient, totalHead) * jetArea(contractionCoefficient, bore);
    }

    /** {@return total head that a flow through one nozzle takes, m} */
    public static double totalHead(
            double velocityCoefficient, double contractionCoefficient, double bore, double flow) {
        double velocity = Physical.notNegative("flow", flow) / jetArea(contractionCoefficient, bore);
        double ideal = velocity / Physical.within("velocityCoefficient", velocityCoefficient, Double.MIN_NORMAL, 1);
        return ideal * ideal / (2 * Gravity.STANDARD);
    }

    /** {@return kinetic power of a jet, W} */
    public static double jetPower(double density, double flow, double jetVelocity) {
        return Physical.positive("density", density)
                * Physical.notNegative("flow", flow)
                * jetVelocity
                * jetVelocity
                / 2;
    }

    /**
     * {@return contraction of a jet from a long sharp slot in a plane wall, {@code π/(π + 2)} = 0.611} Exact for a fluid
     * without friction (Kirchhoff 1869; Lamb, Hydrodynamics, 74 to 75); round sharp holes are measured within 2 % of it.
     */
    public static double slotContraction() {
        return Math.PI / (Math.PI + 2);
    }
}
