package org.leat.pack.kit;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.NamedLimit;
import org.leat.check.Outcome;
import org.leat.check.Spot;
import org.leat.design.Pipe;
import org.leat.plant.loads.OutsideLoad;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;

/** What a section's wall stands of pressure from outside, as the rules hold it against suction. */
public final class OutsidePressure {

    /** Of the pressure at which the wall buckles over what is allowed. */
    private static final NamedLimit SAFETY = new NamedLimit("safety", RATIO, 2, "", "AWWA M55; PPI", HIGHER);

    /** Of the pipe. */
    private static final NamedLimit OVALITY = new NamedLimit(
            "ovality", RATIO, 0.03, "%", "coiled pipe, PPI Handbook of PE Pipe, ch. 6 (from memory)", LOWER);

    /** How much stiffer a plastic wall is under hours of load than under 50 years of it. */
    private static final NamedLimit CREEP = new NamedLimit(
            "creep",
            RATIO,
            1.9,
            "",
            "PPI Handbook of PE Pipe, ch. 3 appendix: 100 hours over 50 years (from memory)",
            LOWER);

    /** All three: rules that ask what a wall stands from outside have them. */
    public static final List<NamedLimit> LIMITS = List.of(SAFETY, OVALITY, CREEP);

    /** What {@link #thickerWall} says. */
    public static final String THICK_WALL = "A pipe of SDR {ratio} or less: its outside diameter over its wall.";

    private OutsidePressure() {}

    /** {@return the sections that no helix keeps open} */
    public static List<SectionNumbers> soft(Judgement j) {
        return PipeSection.all(j).stream()
                .filter(OutsidePressure::isSoft)
                .map(PipeSection::numbers)
                .toList();
    }

    /** {@return whether no helix keeps a section open} */
    public static boolean isSoft(PipeSection section) {
        return !(section.pipe() instanceof Pipe.Hose hose) || !Boolean.TRUE.equals(hose.suctionProof());
    }

    /** {@return the pressure at which the wall buckles under hours of load, Pa} */
    public static Amount bucklingOfHours(Judgement j, SectionNumbers section) {
        return buckling(
                j, section, OutsideLoad.modulusOfHours(section, j.limit("creep").value()));
    }

    /** {@return the pressure at which the wall buckles, Pa} Modulus for the duration of the load, Pa. */
    public static Amount buckling(Judgement j, SectionNumbers section, Amount modulus) {
        return OutsideLoad.buckling(section, modulus, j.limit("ovality").value());
    }

    /** {@return suction of water that hangs in a section above the open nozzles, Pa; at most a vacuum} */
    public static double hanging(Judgement j, SectionNumbers section) {
        return OutsideLoad.suction(j.numbers(), -Math.max(section.fromElevation(), section.toElevation()));
    }

    /**
     * {@return whether a wall stands a suction, Pa, with the safety factor} An error where it buckles, a warning where only
     * the safety factor is short.
     */
    public static Outcome stands(Judgement j, Spot spot, double suction, Amount buckling) {
        double safety = j.limit("safety").value();
        double allowed = spot.known(buckling) / safety;
        return spot.as(suction > allowed * safety ? ERROR : WARNING).atMost(suction, allowed, PRESSURE);
    }

    /** {@return the outside diameter over the wall that would stand it, told with {@code ratio}} */
    public static Stream<Change> thickerWall(Judgement j, Outcome.Fail failure) {
        SectionNumbers section = PipeSection.of(j, failure).numbers();
        if (failure.comparison() == null || !(section.leastWall() > 0)) {
            return Stream.empty();
        }
        double now = section.outsideDiameter() / section.leastWall();
        double ratio = 1 + (now - 1) * Math.cbrt(failure.limit() / failure.value());
        return StandardSizes.dimensionRatio(ratio).stream()
                .mapToObj(sold -> Change.advice().with("ratio", sold, RATIO));
    }
}
