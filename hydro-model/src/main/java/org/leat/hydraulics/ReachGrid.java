package org.leat.hydraulics;

import java.util.List;
import org.leat.law.Gravity;

/**
 * Reaches of equal travel time: {@code dt = dx/a} in every section. A section has a whole number of reaches, at least one (one that
 * is shorter than half a reach joins its neighbour: {@link ShortPieces}), so wave speeds are adjusted a little; the number of reaches is chosen, from the one wished to half as many more, so that the
 * largest adjustment is least, and the travel time of the whole line is kept. Source: Wylie and Streeter, ch. 3.
 */
final class ReachGrid {

    /** Sections with reaches of their own, and the pieces too short for one that joined them. */
    final ShortPieces pieces;

    /** Nodes of lasting section i are {@code first[i] … first[i + 1] − 1}; a joint has one node in each of its sections. */
    final int[] first;

    final double timeStep;

    /** B = a/(g A) of each section, s/m². */
    final double[] impedance;

    /** R = f dx/(2 g D A²) of each section, s²/m⁵. */
    final double[] resistance;

    /** largest relative adjustment of a wave speed. */
    final double waveSpeedChange;

    ReachGrid(List<SurgeSection> all, int reaches) {
        double total = all.stream().mapToDouble(SurgeSection::travelTime).sum();
        pieces = new ShortPieces(all, total / reaches / 2);
        List<SurgeSection> sections = pieces.lasting;
        int[] counts = best(sections, reaches);
        timeStep = timeStep(sections, counts);
        waveSpeedChange = change(sections, counts);
        first = new int[counts.length + 1];
        impedance = new double[counts.length];
        resistance = new double[counts.length];
        for (int i = 0; i < counts.length; i++) {
            SurgeSection s = sections.get(i);
            first[i + 1] = first[i] + counts[i] + 1;
            double waveSpeed = s.length() / (counts[i] * timeStep);
            impedance[i] = waveSpeed / (Gravity.STANDARD * s.area());
            resistance[i] = s.resistance() / counts[i];
        }
    }

    int nodes() {
        return first[first.length - 1];
    }

    private static int[] best(List<SurgeSection> sections, int reaches) {
        int[] best = counts(sections, reaches);
        double least = change(sections, best);
        for (int n = reaches + 1; n <= reaches + reaches / 2 && least > 1e-9; n++) {
            int[] tried = counts(sections, n);
            double change = change(sections, tried);
            if (change < least - 1e-12) {
                best = tried;
                least = change;
            }
        }
        return best;
    }

    private static int[] counts(List<SurgeSection> sections, int reaches) {
        double total = sections.stream().mapToDouble(SurgeSection::travelTime).sum();
        return sections.stream()
                .mapToInt(s -> (int) Math.max(1, Math.round(s.travelTime() / total * reaches)))
                .toArray();
    }

    private static double timeStep(List<SurgeSection> sections, int[] counts) {
        double total = 0;
        int sum = 0;
        for (int i = 0; i < counts.length; i++) {
            total += sections.get(i).travelTime();
            sum += counts[i];
        }
        return total / sum;
    }

    private static double change(List<SurgeSection> sections, int[] counts) {
        double timeStep = timeStep(sections, counts);
        double worst = 0;
        for (int i = 0; i < counts.length; i++) {
            worst = Math.max(worst, Math.abs(sections.get(i).travelTime() / (counts[i] * timeStep) - 1));
        }
        return worst;
    }
}
