package org.leat.pack.kit;

import static org.leat.quantity.QuantityKind.PRESSURE;

import java.util.OptionalDouble;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.design.StopWater;
import org.leat.plant.cases.Closing;
import org.leat.plant.cases.StopPeak;
import org.leat.plant.numbers.Amount;

/**
 * The stop of the water that leaves a section of the penstock least of what it may see for a moment. A failure goes before
 * what is not known, and that before any pass: it may be worse.
 *
 * @param closing the stop
 * @param pressure the highest, the blow of a water column that parts and rejoins included, Pa; unknown where a wave speed is, or where
 *     what is computed of that blow does not tell whether the rating holds
 * @param rating what the section may see for a moment, Pa
 * @param peak what is known of the pressure
 */
public record WorstStop(Closing closing, Amount pressure, Amount rating, StopPeak peak) {

    /** What is said of {@link StopPeak#DAMPED}; told with {@code allowed}. */
    public static final String DAMPED =
            "The water column parts and rejoins. Up to the blow after the first cavity {allowed} is not"
                    + " exceeded; the blows after it exceed it in a computation that leaves out how polyethylene damps them. Somebody who can"
                    + " compute or measure that must look.";

    /** {@return the worst stop of a section; the plant is solved} */
    public static WorstStop of(Judgement j, int section) {
        Amount rating = j.numbers().penstock().sections().get(section).surgeRatingHot();
        return Worst.least(
                j.solved().closing().stream()
                        .map(closing -> of(closing, section, rating))
                        .toList(),
                WorstStop::rank);
    }

    /** {@return one stop against what a section may see for a moment} */
    public static WorstStop of(Closing closing, int section, Amount rating) {
        StopPeak peak = closing.peak(section);
        Amount pressure = rating instanceof Amount.Known allowed
                ? peak.against(seen -> margin(seen, allowed.value()) >= 0)
                : peak.highest();
        return new WorstStop(closing, pressure, rating, peak);
    }

    /** {@return whether a valve is said to stop the water of several nozzles at once, but is not among the fittings} */
    public static boolean valveNotListed(Judgement j) {
        StopWater stop = DesignParts.safeguards(j).stopWater();
        return (stop == StopWater.QUICK_VALVE || stop == StopWater.SLOW_VALVE)
                && j.solved().closing().stream().noneMatch(c -> c.cause() == Closing.Cause.VALVE)
                && j.solved().running().stream()
                        .anyMatch(r -> r.nozzles().bores().size() > 1);
    }

    /** {@return whether somebody shuts it in a time} A plug in a nozzle parts the column of nearly every pipe. */
    public static boolean timed(Closing closing) {
        return closing.cause() == Closing.Cause.VALVE || closing.cause() == Closing.Cause.NOZZLE_SHUT;
    }

    /** {@return what is left up to the rating, as a share of it, below zero beyond it; empty where one is not known} */
    public OptionalDouble margin() {
        return pressure instanceof Amount.Known seen && rating instanceof Amount.Known allowed
                ? OptionalDouble.of(margin(seen.value(), allowed.value()))
                : OptionalDouble.empty();
    }

    private static double margin(double seen, double allowed) {
        return Comparison.atMost(seen, allowed, PRESSURE).margin();
    }

    private double rank() {
        OptionalDouble margin = margin();
        return margin.isEmpty() ? 0.5 : margin.getAsDouble() + (margin.getAsDouble() < 0 ? 0 : 1);
    }
}
