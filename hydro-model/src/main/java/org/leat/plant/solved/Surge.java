package org.leat.plant.solved;

import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.plant.numbers.Amount;

/**
 * Pressures along the penstock while its flow changes, by the method of characteristics: the extremes over the change and
 * the swings that follow it.
 *
 * <p>Where the water column parts, all that comes after that moment is void: the lowest pressures are then no lower than
 * that of boiling water; the highest are those of the change and half a return time, before the column parts, and may be surpassed
 * when it closes again, by how much is not computed.
 *
 * @param nodes at the intake and at each section's end
 * @param sections the extremes within each section, at its lower end's place
 * @param along at every point of the grid, from the intake down; a joint has a point in each of its sections
 * @param boiling pressure at which the water boils, Pa; below zero
 * @param deepest the point of least pressure
 * @param airEntered whether air came in through the nozzles
 * @param highestHolds whether the highest pressures were met before a column parts; false where it parts earlier
 * @param waveSpeedChange largest relative adjustment of a wave speed that the grid needed
 * @param parts why the highest pressures are not the last word: the column parts; null where it holds
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Surge(
        List<PressureRange> nodes,
        List<PressureRange> sections,
        List<PressureRange> along,
        double boiling,
        PressureRange deepest,
        boolean airEntered,
        boolean highestHolds,
        double waveSpeedChange,
        Amount.@Nullable Unknown parts) {
    public Surge {
        nodes = List.copyOf(nodes);
        sections = List.copyOf(sections);
        along = List.copyOf(along);
    }

    /**
     * Highest and lowest pressure at one point, or in one section, of the penstock while the flow changes.
     *
     * @param at {@code intake}, or the name of a section
     * @param distance along the pipe from the intake, m
     * @param elevation above the nozzle axis, m
     * @param highest above atmosphere, Pa
     * @param lowest above atmosphere, Pa; below zero under suction
     */
    public record PressureRange(String at, double distance, double elevation, double highest, double lowest) {}
}
