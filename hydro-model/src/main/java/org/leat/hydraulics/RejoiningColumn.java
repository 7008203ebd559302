package org.leat.hydraulics;

import java.util.Arrays;
import org.leat.law.Physical;

/**
 * The blows of a water column that parts after a stop at the nozzles and rejoins: a discrete gas cavity model (gas fraction 1e-7
 * at each node, implicit in the volume, steady friction) on three grids, compared blow by blow. Each run ends when the blows have
 * died down, at the latest after 20 periods of 4 L/a, so that a study costs a few milliseconds.
 *
 * <p>What to make of it: the first blow is the tank level and {@link Joukowsky}, the blow after the first cavity is the same on
 * every grid, later ones are judged by the largest with the spread on top ({@link RejoiningBlows}). Steady friction is on the safe
 * side; a plastic wall damps later blows: for polyethylene the answer is for review, too high rather than too low. Left out:
 * velocity head, unsteady friction, air that comes out of solution, supports that move.
 *
 * <p>Source: Wylie, J. Fluids Eng. 106 (1984) 307; Bergant, Simpson and Tijsseling, Water hammer with column separation: a
 * historical review, J. Fluids Struct. 22 (2006) 135 (both from memory).
 */
public final class RejoiningColumn {

    private static final int[] REACHES = {32, 48, 64};
    private static final double PERIODS = 20;
    private static final int WATCHED_BLOWS = 6;

    private RejoiningColumn() {}

    /**
     * {@return whether the line stands above boiling in every place before the stop, as {@link #blows} needs}
     *
     * @param flow steady, m³/s
     * @param vapourHead pressure head at which water boils, m, below 0: {@link VapourHead}
     */
    public static boolean wholeBefore(SurgeLine line, double flow, double vapourHead) {
        double head = line.tankHead();
        boolean whole = true;
        for (SurgeSection s : line.sections()) {
            whole &= head - s.fromElevation() > vapourHead;
            head -= s.resistance() * flow * Math.abs(flow);
            whole &= head - s.toElevation() > vapourHead;
        }
        return whole;
    }

    /**
     * {@return the blows after a stop at the nozzles}
     *
     * @param line sections with their elevations, and tank
     * @param flow steady before the stop, m³/s; the head it leaves before the nozzles is above 0
     * @param opening what stops it: {@code NozzleOpening.step((n − 1)/n)} for one of n nozzles plugged, or a closing law
     * @param vapourHead pressure head at which water boils, m, below 0: {@link VapourHead}
     * @throws IllegalArgumentException where the water boils before the stop: ask {@link #wholeBefore} first
     */
    public static RejoiningBlows blows(SurgeLine line, double flow, NozzleOpening opening, double vapourHead) {
        Physical.positive("flow", flow);
        Physical.positive("workingHead", line.workingHead(flow));
        Physical.within("vapourHead", vapourHead, -20, -0.1);
        if (!wholeBefore(line, flow, vapourHead)) {
            throw new IllegalArgumentException("the water boils before the stop");
        }
        double duration = opening.lastChange() + PERIODS * 2 * line.returnTime();
        return new RejoiningBlows(
                Arrays.stream(REACHES)
                        .mapToObj(n -> new GasCavities(line, flow, opening, vapourHead, n).run(duration, WATCHED_BLOWS))
                        .toList(),
                vapourHead);
    }
}
