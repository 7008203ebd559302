package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.WayOut;
import org.leat.design.Pipe;
import org.leat.design.Section;
import org.leat.hydraulics.OvalityFactor;
import org.leat.hydraulics.RingBuckling;
import org.leat.hydraulics.SuctionLoad;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.QuantityKind;

/** Pressure from outside: what a section's wall stands and what suction puts on it. */
final class OutsidePressure {

    /** Source of how much stiffer a plastic wall is under hours of load than under 50 years of it. */
    static final String CREEP_SOURCE = "PPI Handbook of PE Pipe, ch. 3 appendix: 100 hours over 50 years (from memory)";

    private static final double LEAST_RATIO = 3.001;

    private OutsidePressure() {}

    /** {@return the sections that no helix keeps open} */
    static List<SectionNumbers> soft(Judgement j) {
        List<SectionNumbers> soft = new ArrayList<>();
        List<Section> sections = j.design().penstock().sections();
        for (int i = 0; i < sections.size(); i++) {
            if (!(sections.get(i).pipe() instanceof Pipe.Hose hose) || !Boolean.TRUE.equals(hose.suctionProof())) {
                soft.add(j.plant().numbers().penstock().sections().get(i));
            }
        }
        return soft;
    }

    /**
     * {@return the pressure at which the wall buckles, Pa}
     *
     * @param modulus for the duration of the load, Pa
     * @param ovality of the pipe
     */
    static Amount critical(SectionNumbers section, Amount modulus, double ovality) {
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
    static Amount modulusOfHours(SectionNumbers section, double creep) {
        return section.longTermModulus() instanceof Amount.Known years && section.modulus() instanceof Amount.Known now
                ? Amount.of(Math.min(now.value(), creep * years.value()))
                : section.longTermModulus();
    }

    /** {@return the pressure from outside of water that hangs a height above the open nozzles, Pa; at most a vacuum} */
    static double hanging(Judgement j, double elevation) {
        return ofHead(j, -elevation);
    }

    /** {@return the pressure from outside at a pressure head, m, Pa; at most a vacuum} */
    static double ofHead(Judgement j, double pressureHead) {
        PlantNumbers numbers = j.plant().numbers();
        return SuctionLoad.pressure(
                pressureHead,
                numbers.water().density(),
                numbers.site().atmosphericPressure(),
                numbers.water().vapourPressure());
    }

    /** {@return the ratio of diameter to wall that would stand it, as advice; the rule says {@code thick-wall}} */
    static List<WayOut> thickerWall(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        for (SectionNumbers section : j.plant().numbers().penstock().sections()) {
            if (comparison != null && failure.path().startsWith(section.path() + "/") && section.leastWall() > 0) {
                double now = section.outsideDiameter() / section.leastWall();
                double ratio = 1 + (now - 1) * Math.cbrt(comparison.high() / comparison.value());
                return List.of(j.advice("thick-wall", Arg.of("ratio", ratio, QuantityKind.RATIO)));
            }
        }
        return List.of();
    }

    /** {@return level of a failure: an error where the wall buckles, a warning where only the safety factor is short} */
    static Level level(Comparison comparison, double safetyFactor) {
        return comparison.value() > comparison.high() * safetyFactor ? Level.ERROR : Level.WARNING;
    }
}
