package org.leat.choice;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Level;

/**
 * Failures that one change clears together. That it does was found by carrying it out, solving the plant again and asking
 * every rule.
 *
 * @param change the change, or advice where no change is known; null where there is neither
 * @param clears what it clears, worst first; where the change is advice or null, the one failure that stands
 * @param alsoTurns how many failures beyond those listed it clears, which are listed under an earlier cause
 */
public record Cause(@Nullable Step change, List<GroupedFailure> clears, int alsoTurns) {

    public Cause {
        clears = List.copyOf(clears);
    }

    /** {@return how many findings of exactly that level it clears} */
    public int count(Level level) {
        return clears.stream()
                .filter(g -> g.worst().outcome().level() == level)
                .mapToInt(GroupedFailure::size)
                .sum();
    }

    /** {@return the worst level among what it clears} */
    public Level worst() {
        return clears.get(0).worst().outcome().level();
    }
}
