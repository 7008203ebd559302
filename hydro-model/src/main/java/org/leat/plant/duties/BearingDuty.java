package org.leat.plant.duties;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.leat.law.Answer;
import org.leat.law.Gravity;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.turbine.BearingLife;
import org.leat.turbine.EquivalentBearingLoad;
import org.leat.turbine.OverhungBearings;

/**
 * What the bearing beside the runner bears, one jet alone pulling with the weight.
 *
 * @param running on one nozzle set
 * @param load equivalent dynamic load, N
 * @param roller whether it is a roller bearing in place of a ball bearing
 */
public record BearingDuty(Running running, double load, boolean roller) {

    /**
     * How the runner is carried by its shaft.
     *
     * @param mass of the turning parts, kg
     * @param overhang of the runner beyond the near bearing, m
     * @param spacing between the bearings, m
     * @param roller roller in place of ball bearings
     */
    public record Shaft(double mass, double overhang, double spacing, boolean roller) {}

    /** {@return the duty on one nozzle set} */
    public static BearingDuty of(PlantNumbers numbers, Running running, Shaft shaft) {
        double radius = numbers.runner().pitchDiameter() / 2;
        int jets = Math.max(1, running.water().jets().size());
        double pull = Math.abs(running.operatingPoint().torque()) / radius / jets;
        double weight = shaft.mass() * Gravity.STANDARD;
        double radial = OverhungBearings.near(pull + weight, shaft.overhang(), shaft.spacing());
        double axial = numbers.water().density()
                * running.water().flow()
                * running.water().jetVelocity()
                * Math.sin(numbers.runner().jetAngle());
        double load = EquivalentBearingLoad.of(radial, Math.abs(axial), EquivalentBearingLoad.DEEP_GROOVE_X, 1.6);
        return new BearingDuty(running, load, shaft.roller());
    }

    /** {@return the duty on the nozzle set that wears most; the plant is solved} */
    public static BearingDuty worst(Cases cases, Shaft shaft) {
        List<BearingDuty> duties = cases.running().stream()
                .map(running -> of(cases.numbers(), running, shaft))
                .toList();
        return Collections.max(duties, Comparator.comparingDouble(BearingDuty::wear));
    }

    /** Grows as life falls: life goes with the cube of the load and with the speed. */
    private double wear() {
        return load * Math.cbrt(running.operatingPoint().speed());
    }

    /** {@return whether there is anything to wear it} */
    public boolean turns() {
        return running.operatingPoint().speed() > 0 && load > 0;
    }

    /** {@return basic rating life, s; outside where it is loaded beyond what the formula covers} It turns. */
    public Answer life(double dynamicRating) {
        return BearingLife.basic(dynamicRating, load, running.operatingPoint().speed(), roller);
    }

    /** {@return the dynamic rating that lasts so long on every nozzle set, N; empty where none turns} Life in s. */
    public static OptionalDouble neededRating(Cases cases, Shaft shaft, double life) {
        return cases.running().stream()
                .map(running -> of(cases.numbers(), running, shaft))
                .filter(BearingDuty::turns)
                .mapToDouble(duty -> BearingLife.neededRating(
                        duty.load(), duty.running().operatingPoint().speed(), life, duty.roller()))
                .max();
    }
}
