package org.leat.turbine;

import org.leat.law.Physical;

/**
 * Greatest stress in the rectangular neck that carries one bucket: {@code 6 F l/(b h^2)} from bending,
 * {@code Fc/(b h)} from pull.
 *
 * <p>Symbols: {@code F} force of the jet [N]; {@code l} lever from the jet's centre to the neck [m]; {@code b} width
 * across the bending and {@code h} thickness along the force [m]; {@code Fc} centrifugal force [N]. Straight beam without
 * notch: a sharp inner corner adds its own factor, so round it. Valid for all physical inputs. Source: beam theory, any
 * text on strength.
 */
public final class BucketRootStress {

    private BucketRootStress() {}

    /** {@return bending stress at the surface [Pa]} */
    public static double bending(double force, double leverArm, double width, double thickness) {
        Physical.notNegative("force", force);
        Physical.notNegative("leverArm", leverArm);
        Physical.positive("width", width);
        Physical.positive("thickness", thickness);
        return 6 * force * leverArm / (width * thickness * thickness);
    }

    /** {@return stress from a pull along the bucket [Pa]} */
    public static double pull(double force, double width, double thickness) {
        Physical.notNegative("force", force);
        return force / (Physical.positive("width", width) * Physical.positive("thickness", thickness));
    }

    /** {@return bending and pull together [Pa]} */
    public static double combined(
            double jetForce, double leverArm, double width, double thickness, double centrifugalForce) {
        return bending(jetForce, leverArm, width, thickness) + pull(centrifugalForce, width, thickness);
    }
}
