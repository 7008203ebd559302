package org.leat.check;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.AssumedValue.SensitiveVerdict;
import org.leat.check.Baseline.BaselineState;
import org.leat.check.WayOut.RejectedChange;
import org.leat.file.Position;

/**
 * An outcome with its place in the file and what the checker found out about it. Immutable.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Finding implements Comparable<Finding> {

    private static final Comparator<Finding> BY_PLACE = Comparator.comparing(Finding::position)
            .thenComparing(f -> f.outcome().identity())
            .thenComparing(f -> f.outcome().kind());

    /**
     * Worst first: numbers that are not meant, failures by level and how far they are beyond the limit, then open, review,
     * told, passes.
     */
    public static final Comparator<Finding> WORST_FIRST = Comparator.comparing((Finding f) -> !f.doubtsInput())
            .thenComparing(f -> f.outcome().kind())
            .thenComparing(f -> f.outcome().level(), Comparator.reverseOrder())
            .thenComparing((Finding f) -> Tightness.of(f))
            .thenComparing(Comparator.naturalOrder());

    /** What has least to spare first; what compares nothing last, but for a failure. */
    public static final Comparator<Finding> TIGHTEST_FIRST =
            Comparator.comparing((Finding f) -> Tightness.of(f)).thenComparing(Comparator.naturalOrder());

    private record About(
            List<WayOut> waysOut,
            List<RejectedChange> rejected,
            List<SensitiveVerdict> restsOn,
            boolean broke,
            Identity stable,
            boolean endangers,
            boolean ofInput) {
        About {
            waysOut = List.copyOf(waysOut);
            rejected = List.copyOf(rejected);
            restsOn = List.copyOf(restsOn);
        }
    }

    private final Outcome outcome;
    private final Position position;
    private final About about;
    private final @Nullable Suppression suppressed;
    private final @Nullable BaselineState baseline;

    private Finding(
            Outcome outcome,
            Position position,
            About about,
            @Nullable Suppression suppressed,
            @Nullable BaselineState baseline) {
        this.outcome = outcome;
        this.position = position;
        this.about = about;
        this.suppressed = suppressed;
        this.baseline = baseline;
    }

    /** {@return a finding of which nothing more is known} */
    public static Finding of(Outcome outcome, Position position) {
        return new Finding(
                outcome,
                position,
                new About(List.of(), List.of(), List.of(), false, outcome.identity(), false, false),
                null,
                null);
    }

    /** {@return the same with ways out, and with changes that would bring another failure as bad} */
    public Finding with(List<WayOut> ways, List<RejectedChange> rejected) {
        return about(
                new About(ways, rejected, about.restsOn, about.broke, about.stable, about.endangers, about.ofInput));
    }

    /** {@return the same, turning with assumptions} */
    public Finding restingOn(List<SensitiveVerdict> assumptions) {
        return about(new About(
                about.waysOut, about.rejected, assumptions, about.broke, about.stable, about.endangers, about.ofInput));
    }

    /** {@return the same, the rule having broken or not} */
    Finding broken(boolean broke) {
        return about(new About(
                about.waysOut, about.rejected, about.restsOn, broke, about.stable, about.endangers, about.ofInput));
    }

    /** {@return the same with what makes it the same finding tomorrow, and whether it can hurt someone} */
    public Finding known(Identity stable, boolean endangers) {
        return about(
                new About(about.waysOut, about.rejected, about.restsOn, about.broke, stable, endangers, about.ofInput));
    }

    /** {@return the same, its rule judging what was written and not the plant} */
    Finding ofInput(boolean input) {
        return about(new About(
                about.waysOut, about.rejected, about.restsOn, about.broke, about.stable, about.endangers, input));
    }

    private Finding about(About changed) {
        return new Finding(outcome, position, changed, suppressed, baseline);
    }

    /** {@return the same, not counting by someone's word} */
    public Finding suppressedBy(Suppression word) {
        return new Finding(outcome, position, about, word, baseline);
    }

    /** {@return the same, as it stands to a baseline} */
    public Finding against(BaselineState state) {
        return new Finding(outcome, position, about, suppressed, state);
    }

    /** {@return what the rule answered} */
    public Outcome outcome() {
        return outcome;
    }

    /** {@return of the element in the file; of the nearest element that stands there} */
    public Position position() {
        return position;
    }

    /** {@return ways out of a failure, each computed} */
    public List<WayOut> waysOut() {
        return about.waysOut;
    }

    /** {@return what would take the failure away and bring another as bad} */
    public List<RejectedChange> rejected() {
        return about.rejected;
    }

    /** {@return assumptions that would turn the verdict} */
    public List<SensitiveVerdict> restsOn() {
        return about.restsOn;
    }

    /** {@return whether the rule broke here, so that something was not judged} */
    public boolean broke() {
        return about.broke;
    }

    /** {@return what makes it the same finding where lists are reordered: items without a name by what they are} */
    public Identity stable() {
        return about.stable;
    }

    /** {@return whether it needs attention and is of what can hurt someone, as a failure or as a question of one} */
    public boolean endangers() {
        return about.endangers;
    }

    /** {@return whether it is a failure of what was written: all others are judged on that} */
    public boolean doubtsInput() {
        return about.ofInput && outcome.kind() == Kind.FAIL;
    }

    /** {@return by whose word it does not count; null if by nobody's} */
    public @Nullable Suppression suppressed() {
        return suppressed;
    }

    /** {@return how it stands to the baseline; null without one} */
    public @Nullable BaselineState baseline() {
        return baseline;
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

    /** {@return margin as a share of the limit; empty for an answer without comparison} */
    public OptionalDouble margin() {
        Comparison comparison = outcome.comparison();
        return comparison == null ? OptionalDouble.empty() : OptionalDouble.of(comparison.margin());
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

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Finding that
                && outcome.equals(that.outcome)
                && position.equals(that.position)
                && about.equals(that.about)
                && Objects.equals(suppressed, that.suppressed)
                && baseline == that.baseline;
    }

    @Override
    public int hashCode() {
        return Objects.hash(outcome, position, about, suppressed, baseline);
    }

    @Override
    public String toString() {
        return outcome + " at " + position;
    }
}
