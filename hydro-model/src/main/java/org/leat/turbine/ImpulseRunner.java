package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Torque of an impulse runner from the momentum of its jets, less friction and windage:
 *
 * <p>{@code T = e (1 + kappa cos b1) rho Q R phi0 Vj (1 - x - m x^4) - Tb - c w^2}, {@code x = w R/(phi0 Vj)}.
 *
 * <p>Symbols: {@code e} bucket efficiency [1]; {@code kappa = k cos b2} return factor [1]; {@code rho} density [kg/m3];
 * {@code Q} flow of all jets [m3/s]; {@code R} pitch radius [m]; {@code Vj} jet velocity [m/s]; {@code w} angular speed
 * [rad/s]; {@code Tb} bearing torque [N m]; {@code c} windage [N m s2]; {@code m} late entry [1]. Jet in the wheel's
 * plane: {@code b1 = 0}, {@code phi0 = 1}, the textbooks' {@code rho Q R (Vj - U)(1 + k cos b2)}. Oblique jet: {@code b1}
 * is the angle at which the relative velocity enters at the best ratio of {@link ObliqueJetRatio}; away from it only the
 * part along the bucket's entry is turned, the rest is lost. {@code phi0}, twice the best ratio, is where torque ends.
 *
 * <p>Late entry is ours: near the jet's own speed the last water of a cut-off jet no longer reaches the bucket it was
 * meant for. A loss with the fourth power of the ratio brings best ratio (0.46 to 0.48) and runaway (1.75 to 1.9 times best)
 * of real wheels together, which windage alone does not; above {@code x = 1} it goes on along its tangent.
 *
 * <p>Valid for any flow and jet velocity; buckets faster than {@code phi0 Vj} brake. Without flow or jet only friction
 * is left. Sources: Euler, in any text on impulse turbines; handbooks for the ranges. Immutable, allocates nothing.
 */
public final class ImpulseRunner {

    private static final int MAX_STEPS = 60;

    private final RunnerParameters parameters;
    /** Of the water's torque: e (1 + kappa cos b1) rho R phi0. */
    private final double gain;
    /** R/phi0. */
    private final double radiusOverEnd;

    private final double lateEntry;
    private final double bearingTorque;
    private final double windage;
    private final double endRatio;
    private final double bestSpeedRatio;

    public ImpulseRunner(RunnerParameters parameters) {
        this.parameters = parameters;
        double kappa = parameters.returnFactor();
        double best = ObliqueJetRatio.best(parameters.jetAngle(), kappa);
        double entry = Math.atan2(Math.sin(parameters.jetAngle()), Math.cos(parameters.jetAngle()) - best);
        this.endRatio = 2 * best;
        this.gain = parameters.bucketEfficiency()
                * (1 + kappa * Math.cos(entry))
                * parameters.density()
                * parameters.pitchRadius()
                * endRatio;
        this.radiusOverEnd = parameters.pitchRadius() / endRatio;
        this.lateEntry = parameters.lateEntry();
        this.bearingTorque = parameters.bearingTorque();
        this.windage = parameters.windage();
        this.bestSpeedRatio = endRatio * root(1, 2, 0, 5 * lateEntry);
    }

    /** {@return what it is computed from} */
    public RunnerParameters parameters() {
        return parameters;
    }

    /** {@return torque at the shaft [N m]; negative where friction or the water brakes} */
    public double torque(double flow, double jetVelocity, double angularSpeed) {
        double friction = windage * angularSpeed * Math.abs(angularSpeed);
        double bearing = angularSpeed < 0 ? -bearingTorque : bearingTorque;
        return waterTorque(flow, jetVelocity, angularSpeed) - bearing - friction;
    }

    /** {@return torque of the water on the buckets, before friction and windage [N m]} */
    public double waterTorque(double flow, double jetVelocity, double angularSpeed) {
        if (!(flow > 0 && jetVelocity > 0)) {
            return 0;
        }
        double x = angularSpeed * radiusOverEnd / jetVelocity;
        double late = x <= 0 ? 0 : x <= 1 ? x * x * x * x : 4 * x - 3;
        return gain * flow * jetVelocity * (1 - x - lateEntry * late);
    }

    /** {@return power at the shaft [W]} */
    public double power(double flow, double jetVelocity, double angularSpeed) {
        return torque(flow, jetVelocity, angularSpeed) * angularSpeed;
    }

    /** {@return shaft power over jet power [1], zero without a jet} */
    public double efficiency(double flow, double jetVelocity, double angularSpeed) {
        double jet = jetPower(flow, jetVelocity);
        return jet > 0 ? power(flow, jetVelocity, angularSpeed) / jet : 0;
    }

    /** {@return power of the water on the buckets over jet power [1] at a ratio of bucket speed to jet speed} */
    public double hydraulicEfficiency(double speedRatio) {
        return 2
                * speedRatio
                * waterTorque(1, 1, speedRatio / parameters.pitchRadius())
                / (parameters.density() * parameters.pitchRadius());
    }

    /** {@return power of the jets, rho Q Vj squared over two [W]} */
    public double jetPower(double flow, double jetVelocity) {
        return 0.5 * parameters.density() * flow * jetVelocity * jetVelocity;
    }

    /** {@return bucket speed over jet speed at which the water gives most power [1]} */
    public double bestSpeedRatio() {
        return bestSpeedRatio;
    }

    /** {@return speed of most shaft power [rad/s], a little lower than by the ratio alone; zero where it does not start} */
    public double bestSpeed(double flow, double jetVelocity) {
        return speed(flow, jetVelocity, 2, 3, 5);
    }

    /** {@return speed without load at which torque is nil [rad/s]; zero where the jet does not start it} */
    public double runawaySpeed(double flow, double jetVelocity) {
        return speed(flow, jetVelocity, 1, 1, 1);
    }

    /** {@return torque at standstill [N m]; negative where friction holds the runner} */
    public double stallTorque(double flow, double jetVelocity) {
        return torque(flow, jetVelocity, 0);
    }

    private double speed(double flow, double jetVelocity, double one, double two, double four) {
        Physical.notNegative("flow", flow);
        Physical.notNegative("jetVelocity", jetVelocity);
        double stalled = gain * flow * jetVelocity;
        if (!(stalled > bearingTorque)) {
            return 0;
        }
        double perRatio = jetVelocity / radiusOverEnd;
        double drag = windage * perRatio * perRatio / stalled;
        return perRatio * root(1 - bearingTorque / stalled, one, two * drag, four * lateEntry);
    }

    /** Root of start - a x - b x^2 - c x^4: concave and falling, so Newton comes down from the right. */
    private static double root(double start, double a, double b, double c) {
        double x = start / a;
        for (int i = 0; i < MAX_STEPS; i++) {
            double cubed = x * x * x;
            double next = x + (start - a * x - b * x * x - c * cubed * x) / (a + 2 * b * x + 4 * c * cubed);
            if (!(next < x)) {
                break;
            }
            x = next;
        }
        return x;
    }
}
