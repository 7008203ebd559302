package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Force that a bucket pulls its root with: {@code F = m R omega^2}.
 *
 * <p>Symbols: {@code m} mass of one bucket [kg]; {@code R} radius of its centre of mass [m]; {@code omega} angular speed
 * [rad/s], at runaway for the worst case. Valid for all physical inputs. Source: mechanics.
 */
public final class CentrifugalForce {

    private CentrifugalForce() {}

    /** {@return force outward [N]} */
    public static double of(double mass, double radius, double angularSpeed) {
        Physical.notNegative("mass", mass);
        Physical.notNegative("radius", radius);
        Physical.finite("angularSpeed", angularSpeed);
        return mass * radius * angularSpeed * angularSpeed;
    }
}
