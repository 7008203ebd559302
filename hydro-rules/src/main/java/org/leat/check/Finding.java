package org.leat.check;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.file.Position;

/**
 * An outcome with its place in the file and what the checker found out about it.
 *
 * @param outcome what the rule answered
 * @param position of the element in the file; of the nearest element that stands there
 * @param waysOut of a failure, each computed
 * @param inVain what would take the failure away and bring another as bad
 * @param restsOn assumptions that would turn the verdict
 * @param broke whether the rule broke here, so that something was not judged
 * @param lasting what makes it the same finding where lists are reordered: items without a name by what they are
 * @param endangers whether it needs attention as an error, or a question of one, that can hurt someone
 * @param suppressed by whose word it does not count; null if by nobody's
 * @param baseline how it stands to the baseline; null without one
 */
public record Finding(
        Outcome outcome,
        Position position,
        List<WayOut> waysOut,
        List<RejectedChange> inVain,
        List<SensitiveVerdict> restsOn,
        boolean broke,
        Identity lasting,
        boolean endangers,
        @Nullable Suppression suppressed,
        @Nullable BaselineState baseline)
        implements Comparable<Finding> {

    private static final Comparator<Finding> BY_PLACE = Comparator.comparing(Finding::position)
            .thenComparing(f -> f.outcome().identity())
            .thenComparing(f -> f.outcome().kind());

    /** Worst first: failures by level and how far they are beyond the limit, then open, review, told, passes. */
    public static final Comparator<Finding> WORST_FIRST = Comparator.comparing(
                    (Finding f) -> f.outcome().kind())
            .thenComparing(f -> f.outcome().level(), Comparator.reverseOrder())
            .thenComparingDouble(Finding::margin)
            .thenComparing(Comparator.naturalOrder());

    public Finding {
        waysOut = List.copyOf(waysOut);
        inVain = List.copyOf(inVain);
        restsOn = List.copyOf(restsOn);
    }

    /** Makes a finding that nobody suppresses and no baseline knows. */
    public Finding(
            Outcome outcome, Position position, List<WayOut> waysOut, List<SensitiveVerdict> restsOn, boolean broke) {
        this(outcome, position, waysOut, List.of(), restsOn, broke, outcome.identity(), false, null, null);
    }

    /** {@return the same, not counting by someone's word} */
    Finding suppressedBy(Suppression word) {
        return new Finding(outcome, position, waysOut, inVain, restsOn, broke, lasting, endangers, word, baseline);
    }

    /** {@return the same, as it stands to a baseline} */
    Finding against(BaselineState state) {
        return new Finding(outcome, position, waysOut, inVain, restsOn, broke, lasting, endangers, suppressed, state);
    }

    /** {@return whether it counts: nobody suppresses it, and no baseline knows it} */
    public boolean counts() {
        return suppressed == null && !known();
    }

    /** {@return whether it needs attention and a baseline knows it} */
    public boolean known() {
        return outcome.kind().needsAttention()
                && (baseline == BaselineState.UNCHANGED || baseline == BaselineState.UPDATED);
    }

    /** {@return margin as a share of the limit; −infinity for a failure without comparison, infinity for the rest} */
    public double margin() {
        Comparison comparison = outcome.comparison();
        if (comparison != null) {
            return comparison.margin();
        }
        return outcome.kind() == Kind.FAIL ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }

    /** {@return whether it is a failure at that level or a worse one, and counts} */
    public boolean failsAt(Level level) {
        return counts() && outcome.kind() == Kind.FAIL && outcome.level().compareTo(level) >= 0;
    }

    /** By file, line, column, rule, element, case. */
    @Override
    public int compareTo(Finding other) {
        return BY_PLACE.compare(this, other);
    }
}
