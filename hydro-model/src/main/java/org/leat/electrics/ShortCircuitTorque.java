package org.leat.electrics;

/**
 * Three leads shorted: I_rms = E/(√2 Z), towards ψ/(√2 L) as speed rises; braking torque T = 1.5 p ψ² ω_e R/(R² + ω_e²L²),
 * at most 1.5 p ψ²/(2L) at ω_e = R/L. Above that speed it falls: shorting a machine that runs away brakes weakly.
 *
 * <p>Source: circuit equations of the sine machine.
 */
public final class ShortCircuitTorque {

    private ShortCircuitTorque() {}

    /** {@return current of one lead, rms, at a mechanical angular speed (rad/s), A} */
    public static double current(AlternatorConstants machine, double speed) {
        double impedance = Math.hypot(machine.phaseResistance(), machine.reactance(speed));
        return machine.phaseEmf(speed) / (Math.sqrt(2) * impedance);
    }

    /** {@return the current's limit as speed rises, rms, A} Infinite without inductance. */
    public static double currentLimit(AlternatorConstants machine) {
        return machine.fluxLinkage() / (Math.sqrt(2) * machine.phaseInductance());
    }

    /** {@return braking torque at a mechanical angular speed (rad/s), N·m} */
    public static double torque(AlternatorConstants machine, double speed) {
        double i = current(machine, speed);
        return speed > 0 ? 3 * machine.phaseResistance() * i * i / speed : 0;
    }

    /** {@return greatest braking torque at any speed, N·m} Infinite without inductance. */
    public static double peak(AlternatorConstants machine) {
        double psi = machine.fluxLinkage();
        return 0.75 * machine.polePairs() * psi * psi / machine.phaseInductance();
    }

    /**
     * {@return phase inductance from a short-circuit test: L = √((E/(√2 I))² − R²)/ω_e, H}
     *
     * @param phaseEmf peak at the test's speed, V
     * @param current rms of one lead, A
     * @param resistance of one phase, Ω
     * @param electricalSpeed rad/s
     * @throws IllegalArgumentException if the resistance alone would allow less current than was read
     */
    public static double inductance(double phaseEmf, double current, double resistance, double electricalSpeed) {
        double z = phaseEmf / (Math.sqrt(2) * current);
        if (!(z >= resistance)) {
            throw new IllegalArgumentException("the winding's resistance alone allows less current than was read");
        }
        return Math.sqrt((z - resistance) * (z + resistance)) / electricalSpeed;
    }
}
