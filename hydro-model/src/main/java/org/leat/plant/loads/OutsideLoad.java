package org.leat.plant.loads;

import org.leat.hydraulics.OvalityFactor;
import org.leat.hydraulics.RingBuckling;
import org.leat.hydraulics.SuctionLoad;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;

/** Pressure from outside on a section of the penstock: what its wall stands, and what suction puts on it. */
public final class OutsideLoad {

    private static final double LEAST_RATIO = 3.001;

    private OutsideLoad() {}

    /**
     * {@return the pressure at which the wall buckles, Pa} See {@link RingBuckling}.
     *
     * @param modulus for the duration of the load, Pa
     * @param ovality of the pipe, a share
     */
    public static Amount buckling(SectionNumbers section, Amount modulus, double ovality) {
        if (!(modulus instanceof Amount.Known known)) {
            return modulus;
        }
        double ratio = Math.max(LEAST_RATIO, section.outsideDiameter() / section.leastWall());
        return Amount.of(
                RingBuckling.critical(known.value(), section.poissonRatio(), ratio) * OvalityFactor.factor(ovality));
    }

    /**
     * {@return modulus under hours of load, Pa} Between that of a surge and that of 50 years.
     *
     * @param creep how much stiffer than under 50 years
     */
    public static Amount modulusOfHours(SectionNumbers section, double creep) {
        return section.longTermModulus() instanceof Amount.Known years
                        && section.modulusWhenWarm() instanceof Amount.Known now
                ? Amount.of(Math.min(now.value(), creep * years.value()))
                : section.longTermModulus();
    }

    /** {@return the pressure from outside at a pressure head, m, Pa; at most a vacuum} See {@link SuctionLoad}. */
    public static double suction(PlantNumbers numbers, double pressureHead) {
        return SuctionLoad.pressure(
                pressureHead,
                numbers.water().density(),
                numbers.site().atmosphericPressure(),
                numbers.water().vapourPressure());
    }
}
