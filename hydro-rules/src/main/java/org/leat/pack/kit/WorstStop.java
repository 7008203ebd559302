package org.leat.pack.kit;

import static org.leat.quantity.QuantityKind.PRESSURE;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.design.Safeguards;
import org.leat.design.StopWater;
import org.leat.plant.cases.Closing;
import org.leat.plant.numbers.Amount;

/**
 * The stop of the water that leaves a section of the penstock least of what it may see for a moment. A failure goes before
 * what is not known, and that before any pass: it may be worse.
 *
 * @param closing the stop
 * @param pressure the highest, Pa; unknown where a wave speed is, or where the water column parts and what follows when it
 *     closes again can be more than any wave before
 * @param rating what the section may see for a moment, Pa
 */
public record WorstStop(Closing closing, Amount pressure, Amount rating) {

    /** {@return the worst stop of a section; the plant is solved} Follows no waves that other stops already outdo. */
    public static WorstStop of(Judgement j, int section) {
        Amount rating = j.numbers().penstock().sections().get(section).surgeRatingHot();
        List<WorstStop> stops = j.solved().closing().stream()
                .map(closing -> new WorstStop(closing, closing.sections().get(section), rating))
                .toList();
        List<WorstStop> failing =
                stops.stream().filter(stop -> stop.margin().orElse(0) < 0).toList();
        if (!failing.isEmpty()) {
            return Worst.least(failing, WorstStop::rank);
        }
        WorstStop worst = null;
        for (WorstStop stop : stops) {
            if (worst == null || worst.margin().isPresent()) {
                WorstStop followed = stop.followed();
                worst = worst == null || followed.rank() < worst.rank() ? followed : worst;
            }
        }
        return Objects.requireNonNull(worst);
    }

    /** {@return whether a valve is said to stop the water of several nozzles at once, but is not among the fittings} */
    public static boolean valveNotListed(Judgement j) {
        Safeguards safeguards = j.design().safeguards();
        StopWater stop = safeguards == null ? null : safeguards.stopWater();
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
                ? OptionalDouble.of(Comparison.atMost(seen.value(), allowed.value(), PRESSURE)
                        .margin())
                : OptionalDouble.empty();
    }

    private double rank() {
        OptionalDouble margin = margin();
        return margin.isEmpty() ? 0.5 : margin.getAsDouble() + (margin.getAsDouble() < 0 ? 0 : 1);
    }

    /** Of a stop that nobody times the first blow is judged. */
    private WorstStop followed() {
        Amount.Unknown parts = margin().isPresent() && timed(closing) ? closing.parts() : null;
        return parts == null ? this : new WorstStop(closing, parts, rating);
    }
}
