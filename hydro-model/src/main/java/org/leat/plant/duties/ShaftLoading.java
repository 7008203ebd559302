package org.leat.plant.duties;

import org.leat.law.Gravity;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.turbine.OverhungBearings;
import org.leat.turbine.ShaftStress;

/**
 * What the shaft beside the wheel bears for a moment: the wheel held fast in its jets, or the leads shorted all at once.
 *
 * @param torque the greater of the two, N·m
 * @param pull of all jets on the wheel held fast, taken as if they came from one side, and of its weight, N
 * @param moment of the pull at the near bearing, N·m
 */
public record ShaftLoading(double torque, double pull, double moment) {

    /**
     * {@return the strain}
     *
     * @param torque of the joint of wheel and shaft
     * @param mass of the wheel, kg
     * @param overhang of the wheel beyond the near bearing, m
     */
    public static ShaftLoading of(PlantNumbers numbers, HubTorque.Greatest torque, double mass, double overhang) {
        double pull = torque.held() / (numbers.runner().pitchDiameter() / 2) + mass * Gravity.STANDARD;
        return new ShaftLoading(torque.torque(), pull, OverhungBearings.moment(pull, overhang));
    }

    /**
     * {@return stress at the surface of a solid shaft, Pa} See {@link ShaftStress}.
     *
     * @param diameter m
     */
    public double stress(double diameter) {
        return ShaftStress.vonMises(moment, torque, diameter);
    }
}
