package org.leat.plant.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.leat.hydraulics.ColumnSeparation;
import org.leat.hydraulics.NozzleOpening;
import org.leat.hydraulics.RejoiningBlows;
import org.leat.hydraulics.RejoiningBlows.Blow;
import org.leat.hydraulics.RejoiningColumn;
import org.leat.hydraulics.SurgeLine;
import org.leat.hydraulics.SurgeSection;
import org.leat.law.Answer;

/**
 * A stop at the nozzles after which the water column parts: all that its blows are computed from, so that equal ones of plants that
 * have much in common are followed once.
 *
 * @param flow steady before the stop, m³/s
 * @param stopped flow that is stopped, m³/s
 * @param boilingHead pressure head at which water boils, m
 * @param weight of the coldest water, N/m³
 */
public record PartedStop(
        SurgeLine line, double flow, NozzleOpening opening, double stopped, double boilingHead, double weight) {

    /** Of a few numbers that nearly always differ where anything does. */
    @Override
    public int hashCode() {
        return Double.hashCode(flow) + 31 * (Double.hashCode(stopped) + 31 * Double.hashCode(line.tankHead()));
    }

    /** {@return the blows of the column as it rejoins} */
    public Rejoining rejoining() {
        OptionalDouble bound = opening.closes() ? bound() : OptionalDouble.empty();
        if (!RejoiningColumn.wholeBefore(line, flow, boilingHead)) {
            return new Rejoining(List.of(), true, bound);
        }
        RejoiningBlows blows = RejoiningColumn.blows(line, flow, opening, boilingHead);
        List<Rejoining.Peak> peaks = new ArrayList<>();
        for (int i = 0; i < line.sections().size(); i++) {
            peaks.add(new Rejoining.Peak(
                    weight * blows.peak(i, Blow.FIRST).judged(),
                    pressure(blows.judged(i, Blow.AFTER_FIRST_CAVITY)),
                    pressure(blows.judged(i, Blow.LATER)),
                    weight * blows.agreed(i, Blow.FIRST, Blow.AFTER_FIRST_CAVITY),
                    weight * blows.agreed(i, Blow.values())));
        }
        return new Rejoining(peaks, !blows.doneGrowing(), bound);
    }

    private OptionalDouble pressure(OptionalDouble head) {
        return head.isPresent() ? OptionalDouble.of(weight * head.getAsDouble()) : head;
    }

    /** Pressure at the lowest point that no blow of one pipe exceeds after a whole stop, Pa; empty where none is known. */
    private OptionalDouble bound() {
        SurgeSection one = line.sections().get(0);
        double highest = one.fromElevation();
        double lowest = 0;
        for (SurgeSection s : line.sections()) {
            if (s.bore() != one.bore() || s.waveSpeed() != one.waveSpeed()) {
                return OptionalDouble.empty();
            }
            highest = Math.max(highest, Math.max(s.fromElevation(), s.toElevation()));
            lowest = Math.min(lowest, Math.min(s.fromElevation(), s.toElevation()));
        }
        double margin = line.tankHead() - highest - boilingHead;
        if (!(margin > 0)) {
            return OptionalDouble.empty();
        }
        Answer answer =
                ColumnSeparation.onSlope(line.tankHead() - lowest, line.joukowskyHead(stopped), boilingHead, margin);
        return answer instanceof Answer.Value head ? OptionalDouble.of(weight * head.value()) : OptionalDouble.empty();
    }
}
