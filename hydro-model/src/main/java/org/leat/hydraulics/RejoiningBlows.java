package org.leat.hydraulics;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.leat.law.Answer;

/**
 * The blows of a column that parts and rejoins, on three or more grids, by {@link RejoiningColumn}. The first blow and the one
 * after the first cavity agree on all grids; later ones need not, as the spikes of many small cavities meet by chance. So each
 * is judged by the largest of all grids with the spread of the grids on top, and is settled only where that spread is small.
 */
public final class RejoiningBlows {

    /** Spread over the peak, both above boiling, up to which grids agree: common practice. */
    private static final double AGREEMENT = 0.05;

    private final List<GridBlows> grids;
    private final double vapourHead;

    RejoiningBlows(List<GridBlows> grids, double vapourHead) {
        this.grids = List.copyOf(grids);
        this.vapourHead = vapourHead;
    }

    /** Which blow. */
    public enum Blow {
        /** from the stop until the head at the nozzles first falls below its level at rest: tank level + a ΔV/g. */
        FIRST(0, 1),
        /** the next, until it falls again: that of the first cavity as it closes. */
        AFTER_FIRST_CAVITY(1, 2),
        /** all that follow. */
        LATER(2, Integer.MAX_VALUE);

        private final int from;
        private final int to;

        Blow(int from, int to) {
            this.from = from;
            this.to = to;
        }
    }

    /**
     * Highest pressure head of a blow.
     *
     * @param head the largest of all grids, m
     * @param spread largest less smallest of all grids, m
     */
    public record Peak(double head, double spread) {

        /** {@return what is judged: the largest with its spread on top, m} */
        public double judged() {
            return head + spread;
        }
    }

    /** {@return reaches of each grid} */
    public List<Integer> grids() {
        return grids.stream().map(GridBlows::reaches).toList();
    }

    /** {@return largest relative adjustment of a wave speed that a grid needed} */
    public double waveSpeedChange() {
        return grids.stream().mapToDouble(GridBlows::waveSpeedChange).max().orElseThrow();
    }

    /** {@return highest pressure head, m, in a section on each grid, in order; minus infinity where there was no such blow} */
    public List<Double> peaks(int section, Blow blow) {
        return grids.stream().map(g -> g.highest(section, blow.from, blow.to)).toList();
    }

    /** {@return highest pressure head of a blow in a section} No spread where a grid has no such blow, and no peak if none has. */
    public Peak peak(int section, Blow blow) {
        List<Double> met = peaks(section, blow).stream()
                .filter(head -> head > Double.NEGATIVE_INFINITY)
                .toList();
        double most = met.stream().mapToDouble(head -> head).max().orElse(Double.NEGATIVE_INFINITY);
        double least = met.stream().mapToDouble(head -> head).min().orElse(most);
        return new Peak(most, met.isEmpty() ? 0 : most - least);
    }

    /** {@return what a blow is judged by in a section: the largest of all grids with its spread on top, m; empty where there is no such blow} */
    public OptionalDouble judged(int section, Blow blow) {
        Peak peak = peak(section, blow);
        return peak.head() > Double.NEGATIVE_INFINITY ? OptionalDouble.of(peak.judged()) : OptionalDouble.empty();
    }

    /** {@return highest pressure head, m, that each grid reaches in a section in one of some blows} Minus infinity where one has none. */
    public double agreed(int section, Blow... blows) {
        return grids.stream()
                .mapToDouble(g -> Arrays.stream(blows)
                        .mapToDouble(blow -> g.highest(section, blow.from, blow.to))
                        .max()
                        .orElse(Double.NEGATIVE_INFINITY))
                .min()
                .orElseThrow();
    }

    /** {@return the blow that is judged highest in a section} */
    public Blow governing(int section) {
        Blow governing = Blow.FIRST;
        for (Blow blow : Blow.values()) {
            if (peak(section, blow).judged() > peak(section, governing).judged()) {
                governing = blow;
            }
        }
        return governing;
    }

    /** {@return whether the grids agree within 5 % on the blow that governs a section, and the blows grew no more} */
    public boolean settled(int section) {
        Peak peak = peak(section, governing(section));
        return doneGrowing() && peak.spread() <= AGREEMENT * (peak.head() - vapourHead);
    }

    /** {@return whether on every grid the later half of the blows brought nothing greater} */
    public boolean doneGrowing() {
        return grids.stream().allMatch(GridBlows::doneGrowing);
    }

    /**
     * {@return highest pressure head in a section, m: that of the governing blow with its spread on top} {@link Answer.Outside}
     * where the blows still grew when the run ended, so that a greater one may follow.
     */
    public Answer highestPressureHead(int section) {
        double judged = peak(section, governing(section)).judged();
        return doneGrowing()
                ? Answer.of(judged)
                : Answer.above(
                        "discrete gas cavity model, blows that grow no more",
                        "highestPressureHead",
                        judged,
                        judged,
                        "m");
    }
}
