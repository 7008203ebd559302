package org.leat.choice;

import java.util.List;
import java.util.stream.Stream;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Level;
import org.leat.choice.Overview.GroupedFailure;
import org.leat.choice.Plan.Step;

/**
 * Failures that one change clears together. That it does was found by carrying it out, solving the plant again and asking
 * every rule.
 *
 * @param change the change, or advice where no change is known; null where there is neither
 * @param clears what it clears, worst first; where the change is advice, the failures of one rule that gives
 *     it; where it is null, one failure
 * @param calms what it leaves without an error, though a lesser failure stays there; worst first. A change of which both
 *     are empty is one that only the least plan's others need
 * @param alsoClears how many findings beyond those listed it clears, which are listed under an earlier cause
 * @param inPlan whether the change is one of the least plan's
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Cause(
        @Nullable Step change,
        List<GroupedFailure> clears,
        List<GroupedFailure> calms,
        int alsoClears,
        boolean inPlan) {

    public Cause {
        clears = List.copyOf(clears);
        calms = List.copyOf(calms);
    }

    /** {@return how many findings of exactly that level it clears} */
    public long count(Level level) {
        Stream<GroupedFailure> groups =
                level == Level.ERROR ? Stream.concat(clears.stream(), calms.stream()) : clears.stream();
        return groups.mapToLong(g -> g.count(level)).sum();
    }

    /** {@return the worst level among what it clears; that of errors where only the plan needs it} */
    public Level worst() {
        return clears.isEmpty() || !calms.isEmpty()
                ? Level.ERROR
                : clears.get(0).worst().outcome().level();
    }

    /** {@return whether it is a change that was tried, not advice} */
    public boolean isTried() {
        return change != null && change.isTried();
    }
}
