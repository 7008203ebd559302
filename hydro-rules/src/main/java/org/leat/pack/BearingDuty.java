package org.leat.pack;

import org.jspecify.annotations.Nullable;
import org.leat.check.Judgement;
import org.leat.design.Bearings;
import org.leat.design.Runner;
import org.leat.law.Answer;
import org.leat.law.Gravity;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.quantity.Si;
import org.leat.turbine.BearingLife;
import org.leat.turbine.EquivalentBearingLoad;
import org.leat.turbine.OverhungBearings;

/**
 * What the bearing beside the runner bears, one jet alone pulling with the weight.
 *
 * @param running on one nozzle set
 * @param load equivalent dynamic load, N
 */
record BearingDuty(Running running, double load) {

    /** {@return path of what is not told; null where a load can be computed} */
    static @Nullable String missing(Judgement j) {
        Runner runner = j.design().runner();
        Bearings bearings = runner == null ? null : runner.bearings();
        if (runner == null || bearings == null) {
            return "/runner/bearings";
        }
        if (runner.mass() == null) {
            return "/runner/mass";
        }
        if (bearings.overhang() == null || bearings.spacing() == null) {
            return "/runner/bearings/" + (bearings.overhang() == null ? "overhang" : "spacing");
        }
        return null;
    }

    /** {@return on the nozzle set that wears most; the plant is solved and nothing is missing} */
    static BearingDuty worst(Judgement j, Bearings bearings) {
        Running running = Worst.most(
                j.cases().running(),
                r -> of(j, bearings, r).load() * Math.cbrt(r.operatingPoint().speed()));
        return of(j, bearings, running);
    }

    static BearingDuty of(Judgement j, Bearings bearings, Running running) {
        PlantNumbers numbers = j.plant().numbers();
        double radius = numbers.runner().pitchDiameter() / 2;
        int jets = Math.max(1, running.water().jets().size());
        double pull = Math.abs(running.operatingPoint().torque()) / radius / jets;
        Runner runner = j.design().runner();
        double weight = runner == null ? 0 : Si.of(runner.mass(), 0) * Gravity.STANDARD;
        double radial =
                OverhungBearings.near(pull + weight, Si.of(bearings.overhang(), 0), Si.of(bearings.spacing(), 1));
        double axial = numbers.water().density()
                * running.water().flow()
                * running.water().jetVelocity()
                * Math.sin(numbers.runner().jetAngle());
        return new BearingDuty(
                running, EquivalentBearingLoad.of(radial, Math.abs(axial), EquivalentBearingLoad.DEEP_GROOVE_X, 1.6));
    }

    /** {@return whether there is anything to wear it} */
    boolean turns() {
        return running.operatingPoint().speed() > 0 && load > 0;
    }

    /** {@return basic rating life, s; it turns} */
    Answer life(Bearings bearings) {
        return BearingLife.basic(
                Si.of(bearings.dynamicRating()), load, running.operatingPoint().speed(), roller(bearings));
    }

    /** {@return the dynamic rating that lasts so long, N; it turns} */
    double neededRating(Bearings bearings, double life) {
        return BearingLife.neededRating(load, running.operatingPoint().speed(), life, roller(bearings));
    }

    private static boolean roller(Bearings bearings) {
        return Boolean.TRUE.equals(bearings.roller());
    }
}
