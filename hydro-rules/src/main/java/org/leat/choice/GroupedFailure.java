package org.leat.choice;

import java.util.List;
import java.util.stream.Stream;
import org.apiguardian.api.API;
import org.leat.check.Finding;
import org.leat.check.Level;
import org.leat.check.WayOut;

/**
 * The failures of one rule at one element over all nozzle sets and cases, taken as one.
 *
 * @param worst the one furthest beyond its limit
 * @param others the rest, worst first
 * @param waysForAll ways out after which none of them is left, found by solving the plant again; of the worst one's words
 * @param onlyForSome whether there are ways out, but none that holds for all of them
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record GroupedFailure(Finding worst, List<Finding> others, List<WayOut> waysForAll, boolean onlyForSome) {

    public GroupedFailure {
        others = List.copyOf(others);
        waysForAll = List.copyOf(waysForAll);
    }

    /** {@return how many findings of exactly that level it stands for} */
    public long count(Level level) {
        return Stream.concat(Stream.of(worst), others.stream())
                .filter(f -> f.outcome().level() == level)
                .count();
    }

    /** {@return how many findings it stands for} */
    public int size() {
        return 1 + others.size();
    }
}
